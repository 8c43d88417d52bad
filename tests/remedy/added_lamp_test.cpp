#include "remedy/added_lamp.h"

#include "judgement/check_study.h"
#include "judgement/made_rules.h"
#include "model/asked_checks.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

/// A lamp 300 mm behind the front of a nose that stands on its inboard side and hides it from
/// there; the nose's own front, `front`, may carry another. Looked at every 5 degrees.
Study behind_nose(TriangleMesh front, double mm2 = 1250)
{
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(5, -600, -60, -300, 300)});
    study.surfaces.add(Surface{.name = "front",
                               .role = Role::opaque,
                               .mirror = MirrorRule::no,
                               .mesh = std::move(front),
                               .clear_for = {}});
    study = asking(std::move(study), "across",
                   {made_row("across", LeastArea{square_millimetres(mm2)}, -45, -45, -15, 15)});
    study.vehicle.median = millimetres(-700); // all of it stands on the left
    study.sampling.step = degrees(5);
    AddLampTask task;
    task.carriers = {SurfaceId{2}};
    study.add_lamp = task;
    return study;
}

TriangleMesh front_plate(int cells = 12)
{
    return moved(plate(Point::Zero(), 300, 300, cells), {300, -300, 0});
}

AddedLampAnswer answer_of(const Study& study)
{
    const Session session(study);
    const AddLampTask& task = *session.study().add_lamp;
    const Findings findings =
        session.check(asked_checks(session.study(), task.checks), study.sampling.step, {});
    return find_added_lamp(session, task, findings, {});
}

double in_front_mm2(const AddedPlace& place) { return in_mm2(LensShape{}.area(place.width)); }

} // namespace

TEST_CASE("the lens found on a plane is that of the closed form", "[remedy]")
{
    const AddedLampAnswer answer = answer_of(behind_nose(front_plate()));
    REQUIRE_FALSE(answer.alone.empty());
    CHECK(answer.alone.front().outcomes == std::vector{Outcome::met});
    // A flat lens that faces forward shows cos 45 cos 15 of its area at (-45, 15): domain, 1830
    // mm2.
    const double least = 1250 / (cos(degrees(45)) * cos(degrees(15)));
    for (const AddedPlace& place : answer.alone) {
        CHECK(in_mm2(place.face) >= least * (1 - 1e-6));
        CHECK(in_mm2(place.face) <= least * 1.01);
        REQUIRE(place.too_small);
        const double too_small = in_mm2(LensShape{}.area(*place.too_small));
        CHECK(too_small < in_front_mm2(place));
        CHECK(in_front_mm2(place) <= too_small * (1 + size_accuracy));
    }
}

TEST_CASE("places found are apart from each other by at least a lens", "[remedy]")
{
    const AddedLampAnswer answer = answer_of(behind_nose(front_plate()));
    REQUIRE(answer.alone.size() == 3);
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < i; ++j)
            CHECK((answer.alone[i].seat.centre - answer.alone[j].seat.centre).norm() >=
                  in_mm(answer.alone[i].width) * 0.99);
}

TEST_CASE("a lamp added to the study makes its check be met", "[remedy]")
{
    const Study study = behind_nose(front_plate());
    CHECK(check_study(study).checks.front().outcome == Outcome::not_met);
    const AddedLampAnswer answer = answer_of(study);
    REQUIRE_FALSE(answer.alone.empty());
    const StudyWithLamp with = with_added_lamp(study, answer.lamp, answer.alone.front().lens,
                                               answer.checks, WhoAnswers::beside_others);
    const Findings findings = check_study(with.study);
    CHECK(findings.checks.front().outcome == Outcome::met);
    // It answers alone: the lamp that was there still does not.
    CHECK(findings.checks.front().rows.front().lamps.front().outcome == Outcome::not_met);
}

TEST_CASE("a lens a little smaller than the least one is not enough", "[remedy]")
{
    const Study study = behind_nose(front_plate());
    const AddedLampAnswer answer = answer_of(study);
    REQUIRE_FALSE(answer.alone.empty());
    const AddedPlace& place = answer.alone.front();
    const LensCarrier carrier(study.surfaces[place.lens.carrier].mesh);
    AddedLens smaller = place.lens;
    smaller.mesh = carrier.cut(place.seat, {}, *place.too_small).mesh;
    const StudyWithLamp with =
        with_added_lamp(study, answer.lamp, smaller, answer.checks, WhoAnswers::beside_others);
    CHECK(check_study(with.study).checks.front().outcome == Outcome::not_met);
}

TEST_CASE("where a body has one place for a lamp, that one is found", "[remedy]")
{
    // Of five patches one faces where light is missing; the others look up, down, aside, back.
    TriangleMesh body = moved(plate(Point::Zero(), 80, 80, 6), {300, -300, 120});
    for (const auto& [angle, at] : {std::pair(60.0, Vector(300, -200, 0)),
                                    {90.0, Vector(300, -420, 0)},
                                    {180.0, Vector(300, -300, -120)},
                                    {120.0, Vector(300, -300, 0)}})
        body = joined(body, moved(turned(plate(Point::Zero(), 80, 80, 6), degrees(angle)), at));
    const AddedLampAnswer answer = answer_of(behind_nose(body));
    REQUIRE(answer.alone.size() == 1);
    CHECK((answer.alone.front().seat.centre - Point(300, -300, 120)).norm() < 40);
    CHECK(answer.counts.all == body.facets.size());
}

TEST_CASE("where nothing on the body can serve, the answer says how candidates fared", "[remedy]")
{
    const TriangleMesh aside =
        moved(turned(plate(Point::Zero(), 300, 300, 6), degrees(90)), {300, -300, 0});
    const AddedLampAnswer answer = answer_of(behind_nose(aside));
    CHECK(answer.alone.empty());
    CHECK(answer.filling.empty());
    CHECK_FALSE(answer.cover);
    CHECK(answer.missing > 0);
    CHECK(answer.counts.serve_none == answer.counts.all);
}

TEST_CASE("a lamp that would have to be larger than allowed is not found", "[remedy]")
{
    Study study = behind_nose(front_plate());
    study.add_lamp->largest = millimetres(40); // 1830 mm2 are 48.3 mm across
    CHECK(answer_of(study).alone.empty());
    study.add_lamp->largest = millimetres(49);
    CHECK_FALSE(answer_of(study).alone.empty());
}

TEST_CASE("the table's rows of place keep lamps where they may stand", "[remedy]")
{
    Study study = behind_nose(front_plate());
    study.tables.front().rows.push_back(made_row(
        "height", HeightLimits{HeightOf::apparent_surface, millimetres(800), millimetres(930)}));
    const AddedLampAnswer answer = answer_of(study);
    REQUIRE_FALSE(answer.alone.empty());
    CHECK(answer.counts.no_room_by_rules > answer.counts.all / 3);
    // The ground lies at z = -800: the whole lens stands from z = 0 to z = 130.
    for (const AddedPlace& place : answer.alone) {
        const Box box = box_of(place.lens.mesh);
        CHECK(box.least.z() >= 0);
        CHECK(box.most.z() <= 130);
    }
}

TEST_CASE("boxes keep candidates within them", "[remedy]")
{
    Study study = behind_nose(front_plate());
    Box box;
    box.add(Point(299, -450, -150));
    box.add(Point(301, -300, 0));
    study.add_lamp->boxes = {box};
    const AddedLampAnswer answer = answer_of(study);
    CHECK(answer.counts.all == 12 * 12 * 2 / 4);
    for (const CandidateFacet& c : answer.candidates)
        CHECK(box.holds(c.centre));
}

TEST_CASE("a check that is met needs no lamp", "[remedy]")
{
    Study study = behind_nose(front_plate());
    std::get<LeastArea>(study.tables.front().rows.front().criterion).area = Area();
    CHECK(answer_of(study).nothing_to_do());
}

TEST_CASE("a row of light says what an added lamp must give, and gives no size", "[remedy]")
{
    Study study = behind_nose(front_plate());
    Rule all{.id = "all", .title = "", .combine = Combine::all_of, .parts = {"across", "light"}};
    study.tables.front().rows.push_back(
        made_row("light", LeastIntensity{candelas(0.3)}, -45, 80, -15, 15));
    study.tables.front().rules.push_back(all);
    study.checks.front().rule = "all";
    const AddedLampAnswer answer = answer_of(study);
    REQUIRE(answer.light.size() == 1);
    CHECK(answer.light.front().everywhere == candelas(0.3));
    REQUIRE_FALSE(answer.alone.empty());
    CHECK(answer.alone.front().outcomes == std::vector{Outcome::no_photometric_data});
}

TEST_CASE("a function that no row of the check speaks of is refused", "[remedy]")
{
    Study study = behind_nose(front_plate());
    study.tables.front().rows.front().functions = {LampFunction::front_indicator};
    study.add_lamp->signal = LampFunction::side_indicator;
    CHECK_THROWS_AS(answer_of(study), InputError);
}

TEST_CASE("scaling the scene scales the lens found", "[remedy]")
{
    const AddedLampAnswer small = answer_of(behind_nose(front_plate()));
    Study large = behind_nose(front_plate(), 5000);
    for (Surface& surface : large.surfaces)
        for (Point& p : surface.mesh.points)
            p *= 2;
    large.add_lamp->largest = millimetres(400);
    large.sampling.feature = millimetres(2);
    const AddedLampAnswer twice = answer_of(large);
    REQUIRE(small.alone.size() == twice.alone.size());
    CHECK(in_mm(twice.alone.front().width) ==
          Approx(2 * in_mm(small.alone.front().width)).epsilon(0.005));
}

TEST_CASE("a mirrored scene has the mirrored lamp", "[remedy]")
{
    const Study left = behind_nose(front_plate());
    Study right = left;
    const Placement mirror = right.vehicle.across_median();
    for (Surface& surface : right.surfaces)
        surface.mesh = placed(surface.mesh, mirror);
    right.lamps[LampId{0}].side = Side::right;
    const AddedLampAnswer a = answer_of(left), b = answer_of(right);
    REQUIRE_FALSE(a.alone.empty());
    REQUIRE(a.alone.size() == b.alone.size());
    CHECK(in_mm2(a.alone.front().face) == Approx(in_mm2(b.alone.front().face)).epsilon(0.005));
    CHECK(a.counts.alone == b.counts.alone);
}
