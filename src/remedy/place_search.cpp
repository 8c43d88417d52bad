#include "remedy/place_search.h"

#include "remedy/place_proof.h"
#include "remedy/surface_distance.h"

#include <algorithm>
#include <limits>

namespace glim {

namespace {

/// So many places are worked out beyond those asked for, since the first estimate of a place's size
/// goes by one ray from its middle.
constexpr std::size_t spare_places = 2;

/// The least lens may be so much smaller than the estimate, which knows one facet's slant alone.
constexpr double least_estimate = 0.9;

/// About a place where a lens has no room, and about one where none was enough, others within this
/// part of its width are passed over.
constexpr double crowded_spots = 8;
constexpr double vain_spots = 3;

/// Places measured in vain end a search after so many for every place asked for.
constexpr std::size_t tries_a_place = 8;

/// Lamps that fill a gap are told once: no rule may ever let them.
constexpr std::size_t filling_places = 1;

Length foremost(const Study& study)
{
    double most = -std::numeric_limits<double>::infinity();
    for (const Surface& s : study.surfaces)
        for (const Point& p : s.mesh.points)
            most = std::max(most, study.vehicle.forward.dot(p));
    return millimetres(most);
}

} // namespace

/// Places taken and places tried in vain, so that no spot is worked out over and over.
class PlaceSearch::Spots {
public:
    void block(const Point& centre, Length around) { spots_.push_back({centre, in_mm(around)}); }
    bool blocked(const Point& p) const
    {
        return std::any_of(spots_.begin(), spots_.end(), [&](const Spot& spot) {
            return (spot.centre - p).norm() < spot.radius_mm;
        });
    }

private:
    struct Spot {
        Point centre;
        double radius_mm;
    };
    std::vector<Spot> spots_;
};

/// How far a search has come.
struct PlaceSearch::Walk {
    std::vector<std::size_t> order; ///< of candidates, the most promising first
    std::size_t next = 0;
    std::size_t tries;
    std::size_t found = 0;
    Spots spots = {};

    bool over() const { return next >= order.size() || tries == 0; }
};

PlaceSearch::PlaceSearch(const Session& session, const AddLampTask& task,
                         const AddedLampAnswer& answer, const Workers& workers)
    : session_(session), study_(session.study()), task_(task), answer_(answer),
      workers_(workers), shape_{task.width_to_height}, foremost_(foremost(study_))
{
    measure_distances();
}

void PlaceSearch::measure_distances()
{
    std::vector<SurfaceId> surfaces;
    std::vector<const TriangleMesh*> meshes;
    for (const CandidateFacet& c : answer_.candidates)
        if (surfaces.empty() || surfaces.back() != c.surface) {
            surfaces.push_back(c.surface);
            meshes.push_back(&study_.surfaces[c.surface].mesh);
        }
    const TriangleMesh lit =
        session_.scene().lit_surface_of({answer_.helped, false, Obstacles::all});
    const auto distances = distances_along(meshes, box_of(lit).centre());
    for (const CandidateFacet& c : answer_.candidates) {
        const auto at = std::find(surfaces.begin(), surfaces.end(), c.surface);
        along_.push_back(distances[static_cast<std::size_t>(at - surfaces.begin())][c.facet]);
    }
}

std::vector<AddedPlace> PlaceSearch::alone(const AddedLampNeeds& needs)
{
    const auto whole = [&](const CandidateFacet& c) {
        std::vector<AreaNeed> all;
        for (const std::span<const AreaNeed> row : needs.whole(c.centre))
            all.insert(all.end(), row.begin(), row.end());
        return all;
    };
    return places({&CandidateFacet::alone, WhoAnswers::added_alone,
                   static_cast<std::size_t>(task_.places), whole, Proof::by_check},
                  needs);
}

std::vector<AddedPlace> PlaceSearch::filling(const AddedLampNeeds& needs)
{
    const auto missing = [&](const CandidateFacet&) { return needs.missing(); };
    const bool allowed =
        std::all_of(needs.rows().begin(), needs.rows().end(), [](const RowsToAnswer& rows) {
            return std::all_of(
                rows.in_directions.begin(), rows.in_directions.end(),
                [](const RuleRow* row) { return row->answered_by == AnsweredBy::together; });
        });
    return places({&CandidateFacet::filling, WhoAnswers::beside_others, filling_places, missing,
                   allowed ? Proof::by_check : Proof::by_measure},
                  needs);
}

std::vector<AddedPlace> PlaceSearch::places(const Wish& wish, const AddedLampNeeds& needs)
{
    std::vector<AddedPlace> found;
    Walk walk{.order = best_first(wish), .tries = tries_a_place * wish.places};
    if (walk.order.empty())
        return found;
    const std::size_t first = walk.order.front();
    StudyWithLamp with = study_with(first, *(answer_.candidates[first].*wish.lens), wish.who);
    const std::vector<std::size_t> checks = checks_with_places(with, wish, needs);
    LensGauge gauge(std::move(with));
    while (!walk.over() && found.size() < wish.places) {
        std::vector<Sized> batch = next_sized(wish, needs, gauge, walk);
        std::stable_sort(batch.begin(), batch.end(),
                         [](const Sized& a, const Sized& b) { return a.figure < b.figure; });
        for (Sized& one : batch)
            if (found.size() < wish.places)
                if (auto place = wish.proof == Proof::by_check
                                     ? proved_place(std::move(one), gauge, checks)
                                     : measured_place(one, gauge))
                    found.push_back(std::move(*place));
        walk.found = found.size();
    }
    std::stable_sort(found.begin(), found.end(), [&](const AddedPlace& a, const AddedPlace& b) {
        return figure(a) < figure(b);
    });
    return found;
}

std::vector<std::size_t> PlaceSearch::best_first(const Wish& wish) const
{
    std::vector<std::size_t> order;
    std::vector<double> keys(answer_.candidates.size());
    for (std::size_t i = 0; i < answer_.candidates.size(); ++i)
        if (const std::optional<Area>& lens = answer_.candidates[i].*wish.lens) {
            order.push_back(i);
            keys[i] = estimate(i, *lens);
        }
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return keys[a] < keys[b]; });
    return order;
}

/// As many as are wanted and some to spare, apart from each other.
std::vector<PlaceSearch::Sized>
PlaceSearch::next_sized(const Wish& wish, const AddedLampNeeds& needs, LensGauge& gauge, Walk& walk)
{
    std::vector<Sized> batch;
    for (; !walk.over() && walk.found + batch.size() < wish.places + spare_places; ++walk.next) {
        const std::size_t i = walk.order[walk.next];
        const CandidateFacet& c = answer_.candidates[i];
        const Area lens = *(c.*wish.lens);
        const Length across = shape_.across(shape_.width_for(lens));
        if (walk.spots.blocked(c.centre))
            continue;
        if (!has_room(i, lens)) {
            walk.spots.block(c.centre, across / crowded_spots);
            continue;
        }
        const std::vector<AreaNeed> asked = wish.needs(c);
        std::optional<Sized> one =
            sized(i, lens, gauge, {needs.looks(), asked, wish.proof == Proof::by_measure});
        --walk.tries;
        walk.spots.block(c.centre, one ? shape_.across(one->fit.patch.width) : across / vain_spots);
        if (one)
            batch.push_back(std::move(*one));
    }
    return batch;
}

std::optional<PlaceSearch::Sized> PlaceSearch::sized(std::size_t candidate, Area lens,
                                                     LensGauge& gauge, const NeedsAsked& asked)
{
    const LensPlace place = place_at(candidate, lens);
    FitOrNot fit = fit_lens(place, lens, gauge, asked, workers_);
    if (!fit.fit)
        return std::nullopt;
    const double figure_of_it = figure(described(candidate, place, *fit.fit, gauge));
    return Sized{candidate, place, std::move(*fit.fit), figure_of_it};
}

std::optional<AddedPlace> PlaceSearch::proved_place(Sized sized, LensGauge& gauge,
                                                    std::span<const std::size_t> checks) const
{
    gauge.put(sized.fit.patch.mesh);
    const PlaceProof proof = proved(sized.place, std::move(sized.fit), gauge, checks, workers_);
    if (!proof.holds)
        return std::nullopt;
    AddedPlace place = described(sized.candidate, sized.place, proof.fit, gauge);
    for (std::size_t i = 0; i < answer_.checks.size(); ++i)
        place.outcomes.push_back(proof.findings.checks[i].outcome);
    return place;
}

AddedPlace PlaceSearch::measured_place(const Sized& sized, LensGauge& gauge) const
{
    gauge.put(sized.fit.patch.mesh);
    return described(sized.candidate, sized.place, sized.fit, gauge);
}

AddedPlace PlaceSearch::described(std::size_t candidate, const LensPlace& place, const LensFit& fit,
                                  const LensGauge& gauge) const
{
    AddedPlace described;
    described.lens = {fit.patch.mesh, answer_.candidates[candidate].surface};
    described.seat = place.seat;
    described.width = fit.patch.width;
    described.height = fit.patch.width / shape_.width_to_height.value_or(1);
    described.face = area_of(fit.patch.mesh);
    described.too_small = fit.too_small;
    described.along_surface = along_[candidate];
    described.behind_nose = behind_nose(place.seat.centre);
    described.in_sight = gauge.in_sight();
    return described;
}

LensPlace PlaceSearch::place_at(std::size_t candidate, Area lens)
{
    const CandidateFacet& c = answer_.candidates[candidate];
    std::unique_ptr<LensCarrier>& carrier = carriers_[c.surface.index];
    if (!carrier)
        carrier = std::make_unique<LensCarrier>(study_.surfaces[c.surface].mesh);
    const Length width = shape_.width_for(std::max(lens, shape_.area(nominal_lens)));
    return {carrier.get(),
            carrier->seat(c.facet, width / 2, study_.vehicle.up, study_.vehicle.left()), shape_,
            task_.largest};
}

/// Whether the surface fills the outline of a lens that is just about large enough.
bool PlaceSearch::has_room(std::size_t candidate, Area lens)
{
    const LensPlace place = place_at(candidate, lens);
    const Length width = std::max(shape_.width_for(lens * least_estimate), millimetres(1));
    return place.carrier->cut(place.seat, shape_, width).filled >= wholly_filled;
}

StudyWithLamp PlaceSearch::study_with(std::size_t candidate, Area lens, WhoAnswers who)
{
    const LensPlace place = place_at(candidate, lens);
    const Length width = shape_.width_for(std::max(lens, shape_.area(nominal_lens)));
    return with_added_lamp(
        study_, answer_.lamp,
        {place.carrier->cut(place.seat, shape_, width).mesh, answer_.candidates[candidate].surface},
        answer_.checks, who);
}

/// The checks asked; of a lamp that answers alone also one for each row of place of their tables.
std::vector<std::size_t> PlaceSearch::checks_with_places(StudyWithLamp& with, const Wish& wish,
                                                         const AddedLampNeeds& needs) const
{
    std::vector<std::size_t> checks = answer_.checks;
    if (wish.who != WhoAnswers::added_alone)
        return checks;
    for (std::size_t i = 0; i < answer_.checks.size(); ++i)
        for (const RuleRow* row : needs.rows()[i].of_place) {
            const std::size_t table = study_.checks[answer_.checks[i]].table;
            checks.push_back(with.study.checks.size());
            with.study.checks.push_back({"place: " + row->id, table, row->id, {with.lamp}});
        }
    return checks;
}

Length PlaceSearch::behind_nose(const Point& p) const
{
    return foremost_ - millimetres(study_.vehicle.forward.dot(p));
}

/// The less the better, as the task ranks places: of a candidate, before a lens is measured there.
double PlaceSearch::estimate(std::size_t candidate, Area lens) const
{
    const CandidateFacet& c = answer_.candidates[candidate];
    switch (task_.rank) {
    case PlaceRank::least_area:
        break;
    case PlaceRank::near_lamp:
        return in_mm(along_[candidate]);
    case PlaceRank::far_from_nose:
        return -in_mm(behind_nose(c.centre));
    case PlaceRank::least_in_sight: {
        // From half of all around a lens is seen by the level part of its face.
        const Vector& up = study_.vehicle.up.vector();
        return in_mm2(lens) * (c.normal - c.normal.dot(up) * up).norm();
    }
    }
    return in_mm2(lens);
}

double PlaceSearch::figure(const AddedPlace& place) const
{
    switch (task_.rank) {
    case PlaceRank::least_area:
        break;
    case PlaceRank::near_lamp:
        return in_mm(place.along_surface);
    case PlaceRank::far_from_nose:
        return -in_mm(place.behind_nose);
    case PlaceRank::least_in_sight:
        return in_mm2(place.in_sight);
    }
    return in_mm2(place.face);
}

} // namespace glim
