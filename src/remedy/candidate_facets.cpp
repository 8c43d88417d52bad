#include "remedy/candidate_facets.h"

#include "machine/stop.h"
#include "visibility/touch.h"

#include <algorithm>

namespace glim {

namespace {

/// A facet seen at a flatter angle than this, some 89 degrees, counts as turned away.
constexpr double least_cosine = 0.02;

bool may_carry(const Study& study, const AddLampTask& task, SurfaceId surface)
{
    const Surface& s = study.surfaces[surface];
    if (task.carriers.empty())
        return s.blocks() && s.role == Role::opaque;
    return std::find(task.carriers.begin(), task.carriers.end(), surface) != task.carriers.end();
}

bool within_boxes(const std::vector<Box>& boxes, const Point& p)
{
    return boxes.empty() ||
           std::any_of(boxes.begin(), boxes.end(), [&](const Box& b) { return b.holds(p); });
}

bool on_side(const Study& study, const Lamp& lamp, const Point& p)
{
    const Length left = study.vehicle.lateral(p);
    return lamp.side == Side::median || (lamp.side == Side::left ? left : -left) >= Length();
}

/// What may stand before an added lamp: all of the body, on both sides.
Caster body_of(const Session& session)
{
    std::vector<Standing> standings;
    const Study& study = session.study();
    for (const SurfaceId s : study.surfaces.ids()) {
        if (!study.surfaces[s].blocks())
            continue;
        standings.push_back({s, false});
        if (study.surfaces[s].mirror == MirrorRule::yes)
            standings.push_back({s, true});
    }
    return session.scene().caster_of(standings);
}

/// Asks rays from candidates, all toward one look at a time.
class Rays {
public:
    Rays(const std::vector<CandidateFacet>& candidates, const Session& session, bool twin)
        : candidates_(candidates), study_(session.study()), origin_(session.scene().origin()),
          caster_(body_of(session)), twin_(twin)
    {
    }

    /// One a candidate: whether it is seen from there.
    std::vector<bool> seen_from(const NeedLook& look) const
    {
        std::vector<std::uint32_t> facing;
        for (std::uint32_t i = 0; i < candidates_.size(); ++i)
            if (candidates_[i].may_stand && look.toward.dot(candidates_[i].normal) > least_cosine)
                facing.push_back(i);
        std::vector<std::uint8_t> hidden = occluded(look.toward, facing, Placement());
        if (twin_) {
            const auto far = occluded(look.twin_toward, facing, study_.vehicle.across_median());
            for (std::size_t i = 0; i < far.size(); ++i)
                hidden[i] |= far[i];
        }
        std::vector<bool> seen(candidates_.size());
        for (std::size_t i = 0; i < facing.size(); ++i)
            seen[facing[i]] = hidden[i] == 0;
        return seen;
    }

private:
    std::vector<std::uint8_t> occluded(const Direction& toward,
                                       const std::vector<std::uint32_t>& facing,
                                       const Placement& where) const
    {
        std::vector<RayStart> starts;
        starts.reserve(facing.size());
        for (const std::uint32_t i : facing) {
            const CandidateFacet& c = candidates_[i];
            const Vector p = where(c.centre) - origin_;
            const Vector n = where.matrix().linear() * c.normal;
            const Length skip = skip_along_ray(study_.sampling.touch, toward.dot(n));
            starts.push_back({static_cast<float>(p.x()), static_cast<float>(p.y()),
                              static_cast<float>(p.z()), static_cast<float>(in_mm(skip))});
        }
        return caster_.occluded(toward, starts);
    }

    const std::vector<CandidateFacet>& candidates_;
    const Study& study_;
    Point origin_;
    Caster caster_;
    bool twin_;
};

/// Looks by what is seen from them.
struct Seen {
    const std::vector<NeedLook>& looks;
    std::vector<std::vector<bool>> from; ///< by look, then by candidate

    /// The lens that shows `area` toward the look from the candidate's place.
    std::optional<Area> lens(const AreaNeed& need, const CandidateFacet& c, std::size_t place) const
    {
        if (!from[need.look][place])
            return std::nullopt;
        return need.area / looks[need.look].toward.dot(c.normal);
    }
};

/// The largest lens of all needs, if there is one for every need and none exceeds `largest`.
std::optional<Area> largest_lens(const Seen& seen, std::span<const AreaNeed> needs,
                                 const CandidateFacet& c, std::size_t place, Area largest)
{
    Area most;
    for (const AreaNeed& need : needs) {
        const std::optional<Area> lens = seen.lens(need, c, place);
        if (!lens || *lens > largest)
            return std::nullopt;
        most = std::max(most, *lens);
    }
    return most;
}

} // namespace

std::vector<CandidateFacet> candidate_facets(const Study& study, const AddLampTask& task,
                                             const Lamp& lamp)
{
    std::vector<CandidateFacet> candidates;
    for (const SurfaceId s : study.surfaces.ids()) {
        if (!may_carry(study, task, s))
            continue;
        const TriangleMesh& mesh = study.surfaces[s].mesh;
        for (std::uint32_t f = 0; f < mesh.facets.size(); ++f) {
            const Point centre = (mesh.corner(f, 0) + mesh.corner(f, 1) + mesh.corner(f, 2)) / 3;
            const Vector n = area_vector(mesh, f);
            if (n.norm() == 0 || !within_boxes(task.boxes, centre) || !on_side(study, lamp, centre))
                continue;
            CandidateFacet c;
            c.surface = s;
            c.facet = f;
            c.centre = centre;
            c.normal = n.normalized();
            c.size = square_millimetres(n.norm());
            candidates.push_back(c);
        }
    }
    return candidates;
}

WeighedCandidates weighed(std::vector<CandidateFacet> candidates, const Session& session,
                          const AddedLampNeeds& needs, Area largest, const Workers& workers)
{
    for (CandidateFacet& c : candidates)
        c.may_stand = needs.may_stand(c.centre);
    const bool twin = needs.lamp().paired && !session.scene().is_symmetric();
    const Rays rays(candidates, session, twin);
    Seen seen{needs.looks(), std::vector<std::vector<bool>>(needs.looks().size())};
    if (!for_each_index(needs.looks().size(), workers, [&](std::size_t i, unsigned) {
            seen.from[i] = rays.seen_from(needs.looks()[i]);
        }))
        throw Stopped();
    WeighedCandidates weighed{std::move(candidates), {}};
    for (std::size_t i = 0; i < weighed.facets.size(); ++i) {
        CandidateFacet& c = weighed.facets[i];
        std::vector<bool> serves(needs.missing().size());
        for (std::size_t m = 0; m < serves.size() && c.may_stand; ++m) {
            const auto lens = seen.lens(needs.missing()[m], c, i);
            serves[m] = lens && *lens <= largest;
            c.serves += serves[m];
        }
        weighed.serves.push_back(std::move(serves));
        if (!c.may_stand)
            continue;
        c.filling = largest_lens(seen, needs.missing(), c, i, largest);
        c.alone = Area();
        for (const std::span<const AreaNeed> row : needs.whole(c.centre)) {
            const auto lens = largest_lens(seen, row, c, i, largest);
            c.alone = lens && c.alone ? std::optional(std::max(*lens, *c.alone)) : std::nullopt;
        }
    }
    return weighed;
}

} // namespace glim
