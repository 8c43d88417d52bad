#include "remedy/keep_clear.h"

#include "geometry/convex_hull.h"
#include "judgement/plan.h"
#include "judgement/see.h"
#include "machine/stop.h"
#include "model/asked_checks.h"
#include "remedy/part_choice.h"
#include "visibility/touch.h"

#include <algorithm>
#include <limits>

namespace glim {

namespace {

/// Around what could stand in the way, so that a space does not end on it.
constexpr double spare_around_mm = 10;
/// A plane ends a space ahead; sideways it ends here at the latest.
constexpr double widest_mm = 5000;
/// Shares of the field are looked at this coarsely at the finest.
constexpr Angle finest_share_step = degrees(5);
constexpr double whole_grain = 1e-9;

/// Around all that could stand in the way, mirror images and lamps included.
Box box_around(const Study& study)
{
    Box box;
    for (const Surface& surface : study.surfaces)
        for (const Point& p : surface.mesh.points) {
            box.add(p);
            if (surface.mirror == MirrorRule::yes)
                box.add(study.vehicle.across_median()(p));
        }
    box.least.array() -= spare_around_mm;
    box.most.array() += spare_around_mm;
    return box;
}

/// A box around lenses alone would end the spaces where they begin.
void refuse_without_reach(const Study& study)
{
    const bool has_body =
        std::any_of(study.surfaces.begin(), study.surfaces.end(), [](const Surface& surface) {
            return surface.role != Role::emitting && surface.role != Role::ignored;
        });
    if (!study.keep_clear.box && !study.keep_clear.plane && !has_body)
        refuse({study.file, 0, 0, {}},
               "nothing but lamps is drawn in this study, so nothing says how far the space to be "
               "kept clear reaches",
               "write box = { least = [...], most = [...] } or plane = { point = [...], normal = "
               "[...] } in [keep_clear], such as a plane 5 m ahead of the lamp");
}

/// Upright sides around the box, as the lamp's ground has it.
SpaceReach reach_of_box(const Box& box, const LevelFrame& frame)
{
    std::vector<Point2> corners;
    SpaceReach reach;
    double bottom = std::numeric_limits<double>::infinity(), top = -bottom;
    for (int i = 0; i < 8; ++i) {
        const Point corner = frame.into(Point((i & 1) != 0 ? box.most.x() : box.least.x(),
                                              (i & 2) != 0 ? box.most.y() : box.least.y(),
                                              (i & 4) != 0 ? box.most.z() : box.least.z()));
        corners.emplace_back(corner.head<2>());
        bottom = std::min(bottom, corner.z());
        top = std::max(top, corner.z());
    }
    return {convex_hull(corners), {millimetres(bottom), millimetres(top)}};
}

SpaceReach reach_of_plane(const ReachPlane& plane, const LevelFrame& frame)
{
    const ConvexPolygon all = {{-widest_mm, -widest_mm},
                               {widest_mm, -widest_mm},
                               {widest_mm, widest_mm},
                               {-widest_mm, widest_mm}};
    const Point2 on = frame.into(plane.on).head<2>();
    const Point2 normal = frame.way_into(plane.normal.vector()).head<2>();
    std::vector<double> side;
    for (const Point2& p : all)
        side.push_back(normal.dot(on - p));
    return {clipped(all, side), {millimetres(-widest_mm), millimetres(widest_mm)}};
}

/// Straight up there is no plan to stand on.
void refuse_steep(const KeepClearSpace& space, const Study& study)
{
    for (const FieldRectangle& r : space.field.rectangles)
        if (r.v_least < -SightSheaf::steepest || r.v_most > SightSheaf::steepest)
            refuse({study.file, 0, 0, {}},
                   "check `" + space.check + "`: the field of row `" + space.row.id +
                       "` reaches within a degree of straight up or down",
                   "leave the check out of `checks` of [keep_clear]");
}

/// Whether the row adds up this lamp and another of its side.
bool answers_with_others(const AskedRow& row, const LampLook& look, const Plan& plan)
{
    return std::any_of(row.together.begin(), row.together.end(), [&](const Asked& together) {
        return plan.standings[together.look].size() > 1 &&
               plan.looks[together.look].side == look.side;
    });
}

class SpaceFinder {
public:
    SpaceFinder(const Session& session, const Workers& workers)
        : session_(session), study_(session.study()), wish_(study_.keep_clear), workers_(workers),
          checks_(asked_checks(study_, study_.keep_clear.checks)),
          plan_(plan_of(study_, session.scene(), checks_,
                        std::max(study_.sampling.step, finest_share_step)))
    {
    }

    KeepClear find();

private:
    void add(const AskedCheck& check, const AskedRow& row, const Asked& asked);
    std::vector<Standing> counted(const Asked& asked, const Criterion& criterion) const;
    void add_intrusions(const ClearSpace& clear, KeepClearSpace& space);
    void add_shares(const Asked& asked, KeepClearSpace& space);
    void spare_other_ways(const AskedCheck& check);

    const Session& session_;
    const Study& study_;
    const KeepClearWish& wish_;
    Workers workers_;
    std::vector<std::size_t> checks_;
    Plan plan_;
    std::optional<Eyes> eyes_; ///< opened where something intrudes
    KeepClear found_;
};

/// Surfaces that count as in the way for a row.
std::vector<Standing> SpaceFinder::counted(const Asked& asked, const Criterion& criterion) const
{
    const PreparedScene& scene = session_.scene();
    const std::vector<SurfaceId>& own = study_.lamps[asked.lamp.lamp].emits;
    std::vector<Standing> counted = scene.obstacles_of(asked.lamp);
    std::erase_if(counted, [&](const Standing& standing) {
        const bool is_own = standing.twin == asked.lamp.twin &&
                            std::find(own.begin(), own.end(), standing.surface) != own.end();
        return is_own || (!std::holds_alternative<LeastArea>(criterion) &&
                          scene.is_approved(standing, asked.lamp));
    });
    return counted;
}

/// The deepest first.
void SpaceFinder::add_intrusions(const ClearSpace& clear, KeepClearSpace& space)
{
    const std::vector<PlacedMesh> meshes = session_.scene().meshes_of(clear.counted);
    std::vector<std::optional<Intrusion>> found(meshes.size());
    const bool done =
        for_each_index(meshes.size(), workers_.silent(), [&](std::size_t i, unsigned) {
            const TriangleMesh mesh = placed(*meshes[i].mesh, meshes[i].placement);
            found[i] = intrusion_of({clear.counted[i], mesh}, clear);
        });
    if (!done)
        throw Stopped();
    for (std::optional<Intrusion>& intrusion : found)
        if (intrusion)
            space.intrusions.push_back(std::move(*intrusion));
    std::stable_sort(space.intrusions.begin(), space.intrusions.end(),
                     [](const Intrusion& a, const Intrusion& b) { return a.depth > b.depth; });
}

void SpaceFinder::add_shares(const Asked& asked, KeepClearSpace& space)
{
    if (!eyes_)
        eyes_.emplace(study_, session_.scene(), plan_, workers_.silent());
    const LampLook& look = plan_.looks[asked.look];
    double whole = 0;
    for (const SolidAngle weight : asked.weights)
        whole += in_steradians(weight);
    const bool by_count = whole == 0;
    if (by_count)
        whole = static_cast<double>(asked.at.size());
    for (std::size_t i = 0; i < asked.at.size(); ++i) {
        const Direction toward = direction_of(look.toward[asked.at[i]], look.frame);
        const double weight = by_count ? 1 : in_steradians(asked.weights[i]);
        for (const SurfaceTaken& taken : eyes_->taken(asked.look, toward))
            for (Intrusion& intrusion : space.intrusions)
                if (taken.standing.surface == intrusion.surface.surface &&
                    taken.standing.twin == intrusion.surface.twin && taken.area.sum() > Area())
                    intrusion.share_of_field += weight / whole;
    }
    for (Intrusion& intrusion : space.intrusions) // a sum of shares is not 1 to the last bit
        intrusion.share_of_field =
            intrusion.share_of_field > 1 - whole_grain ? 1 : intrusion.share_of_field;
}

void SpaceFinder::add(const AskedCheck& check, const AskedRow& row, const Asked& asked)
{
    const std::optional<PartNeeded> needed = part_needed(row.row->criterion);
    if (!needed || asked.not_applicable || asked.category_open || row.proof_from) {
        const std::string name = check.check->name + ": " + row.row->id;
        if (std::find(found_.without_space.begin(), found_.without_space.end(), name) ==
            found_.without_space.end())
            found_.without_space.push_back(name);
        return;
    }
    const LampLook& look = plan_.looks[asked.look];
    KeepClearSpace space;
    space.check = check.check->name;
    space.row = *row.row;
    space.lamp = look.name;
    space.twin = look.twin;
    space.side = look.side;
    space.field = asked.field;
    space.relaxed = asked.relaxation.has_value();
    refuse_steep(space, study_);
    space.needed = needed->area;
    const LevelFrame frame(look.centre, look.frame);
    const SpaceReach reach =
        wish_.plane ? reach_of_plane(*wish_.plane, frame) : reach_of_box(found_.reach, frame);
    const TriangleMesh lit = frame.into(session_.scene().lit_surface_of(asked.lamp));
    const PartChoice choice = chosen_part(lit, {space.field, *needed}, wish_, reach, workers_.stop);
    const KeptParts& kept = choice.kept;
    space.least = least_sight(lit, space.field);
    space.shows_too_little =
        is_too_small(space.least.shown, space.needed) && !answers_with_others(row, look, plan_);
    if (!choice.whole) {
        space.kept = kept.edge;
        space.too_small = kept.too_small;
        space.pieces = kept.parts.size();
        space.by_edge = choice.by_edge;
    }
    const KeepClearBodies bodies =
        keep_clear_bodies(lit, kept, reach, wish_.chord_error, workers_.silent());
    space.mesh = frame.out_of(bodies.mesh);
    space.bodies = bodies.count;
    space.volume = bodies.volume;
    space.within = bodies.within;
    ClearSpace clear{KeepClearSet(sheaves_of(lit, kept), reach.levels), frame, lit,
                     skip_along_ray(study_.sampling.touch, 0), counted(asked, space.row.criterion)};
    add_intrusions(clear, space);
    if (!space.intrusions.empty())
        add_shares(asked, space);
    found_.spaces.push_back(std::move(space));
    found_.asked.push_back(std::move(clear));
}

/// Lamp by lamp: where one way of a rule is kept, the others need not be.
void SpaceFinder::spare_other_ways(const AskedCheck& check)
{
    for (KeepClearSpace& space : found_.spaces) {
        if (space.check != check.check->name)
            continue;
        const RowKept kept = [&](const std::string& row) -> std::optional<bool> {
            for (const KeepClearSpace& other : found_.spaces)
                if (other.check == space.check && other.lamp == space.lamp &&
                    other.twin == space.twin && other.row.id == row)
                    return other.is_kept();
            return std::nullopt;
        };
        space.spared =
            !space.is_kept() &&
            rows_that_count(*check.table, check.check->rule, kept).count(space.row.id) == 0;
        for (const WaysOfRule& ways : ways_of_rule(*check.table, check.check->rule, kept))
            if (std::none_of(found_.choices.begin(), found_.choices.end(),
                             [&](const ChoiceOfSpaces& choice) {
                                 return choice.check == space.check && choice.ways == ways;
                             }))
                found_.choices.push_back({space.check, ways});
    }
}

KeepClear SpaceFinder::find()
{
    refuse_without_reach(study_);
    found_.chord_error = wish_.chord_error;
    if (!wish_.plane)
        found_.reach = wish_.box.value_or(box_around(study_));
    std::size_t all = 0, done = 0;
    for (const AskedCheck& check : plan_.checks)
        for (const AskedRow& row : check.rows)
            all += row.lamps.size();
    for (const AskedCheck& check : plan_.checks)
        for (const AskedRow& row : check.rows)
            for (const Asked& asked : row.lamps) {
                add(check, row, asked);
                if (workers_.progress)
                    workers_.progress(++done, all);
            }
    if (found_.spaces.empty())
        refuse({study_.file, 0, 0, {}}, "no row of the checks asks for a space to be kept clear",
               "name checks in [keep_clear] whose rows ask for areas or for nothing in the way");
    for (const KeepClearSpace& space : found_.spaces)
        if (space.mesh.facets.empty())
            refuse({study_.file, 0, 0, {}},
                   "nothing of the space of lamp `" + space.lamp +
                       "` lies within the reach of "
                       "[keep_clear]",
                   "put the box or the plane where the lamp looks to");
    for (const AskedCheck& check : plan_.checks)
        spare_other_ways(check);
    return std::move(found_);
}

} // namespace

bool KeepClear::is_kept() const
{
    return std::all_of(spaces.begin(), spaces.end(),
                       [](const KeepClearSpace& space) { return space.is_kept() || space.spared; });
}

KeepClear find_keep_clear(const Session& session, const Workers& workers)
{
    return SpaceFinder(session, workers).find();
}

} // namespace glim
