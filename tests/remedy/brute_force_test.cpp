#include "remedy/added_lamp.h"

#include "judgement/made_rules.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "visibility/exact_area.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace glim;
using namespace glim::shapes;

namespace {

constexpr double needed_mm2 = 1250;
const std::array bearings = {Bearing{degrees(-45), degrees(-15)}, Bearing{degrees(-45), degrees(0)},
                             Bearing{degrees(-45), degrees(15)}};

/// A lamp behind a nose; what may carry another is part of a bent, coarsely meshed bumper, before
/// which a post stands.
Study bent_bumper()
{
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(5, -600, -60, -300, 300)});
    const auto add = [&](const std::string& name, TriangleMesh mesh) {
        study.surfaces.add(Surface{.name = name,
                                   .role = Role::opaque,
                                   .mirror = MirrorRule::no,
                                   .mesh = std::move(mesh),
                                   .clear_for = {}});
    };
    add("bumper", moved(cylinder_wall(300, 240, degrees(-70), degrees(50), 12), {0, -350, 0}));
    add("post", box({330, -420, -200}, {350, -400, 200}));
    study =
        asking(std::move(study), "across",
               {made_row("across", LeastArea{square_millimetres(needed_mm2)}, -45, -45, -15, 15)});
    study.vehicle.median = millimetres(-900);
    study.sampling.step = degrees(15);
    AddLampTask task;
    task.carriers = {SurfaceId{2}};
    study.add_lamp = task;
    return study;
}

/// By polygons and not by rays: whether the lens shows enough everywhere.
bool enough(const Study& study, const TriangleMesh& lens)
{
    std::vector<PlacedMesh> obstacles;
    for (const Surface& s : study.surfaces)
        obstacles.push_back({&s.mesh, Placement(), false, false});
    const ExactView view(lens, obstacles, study.sampling.touch);
    const LampFrame frame{Direction::x(), Direction::y(), Direction::z()};
    return std::all_of(bearings.begin(), bearings.end(), [&](const Bearing& b) {
        return view.toward(direction_of(b, frame)).visible >= square_millimetres(needed_mm2);
    });
}

/// The least face of a lens about this facet, by halving; infinite where none is enough.
double least_face_mm2(const Study& study, const LensCarrier& carrier, std::uint32_t facet)
{
    const LensSeat seat = carrier.seat(facet, millimetres(24), Direction::z(), Direction::y());
    double too_small = 10, large = 120;
    if (!enough(study, carrier.cut(seat, {}, millimetres(large)).mesh))
        return std::numeric_limits<double>::infinity();
    while (large - too_small > 0.02) {
        const double middle = (large + too_small) / 2;
        (enough(study, carrier.cut(seat, {}, millimetres(middle)).mesh) ? large : too_small) =
            middle;
    }
    const LensPatch patch = carrier.cut(seat, {}, millimetres(large));
    return patch.filled >= wholly_filled ? in_mm2(area_of(patch.mesh))
                                         : std::numeric_limits<double>::infinity();
}

} // namespace

TEST_CASE("the best place is the one that trying every facet finds", "[remedy]")
{
    const Study study = bent_bumper();
    const LensCarrier carrier(study.surfaces[SurfaceId{2}].mesh);
    double least = std::numeric_limits<double>::infinity();
    for (std::uint32_t f = 0; f < carrier.mesh().facets.size(); ++f)
        least = std::min(least, least_face_mm2(study, carrier, f));
    REQUIRE(std::isfinite(least));

    const Session session(study);
    const Findings findings = session.check(session.all_checks(), study.sampling.step, {});
    const AddedLampAnswer answer = find_added_lamp(session, *study.add_lamp, findings, {});
    REQUIRE_FALSE(answer.alone.empty());
    // Of both: 1 % for the size found, and what the meshes' accuracy takes off.
    CHECK(in_mm2(answer.alone.front().face) >= least * 0.995);
    CHECK(in_mm2(answer.alone.front().face) <= least * 1.03);
}
