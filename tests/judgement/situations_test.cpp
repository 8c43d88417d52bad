#include "judgement/situations.h"

#include "judgement/made_rules.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using namespace glim::shapes;

namespace {

// A lit plate of 60 x 40 mm at x = 0, 800 mm above the ground, that looks forward.
constexpr double width = 60, height = 40;
TriangleMesh lens() { return plate(Point::Zero(), width, height); }

RuleRow in_state(RuleRow row, std::string state)
{
    row.state = std::move(state);
    return row;
}

/// The ground of `from` for a body that stands `rise` mm higher.
void add_state(Study& study, const std::string& name, double rise_mm)
{
    Ground ground = study.grounds.front().ground;
    ground.on -= rise_mm * ground.up.vector();
    study.grounds.push_back(
        {name, ground, StateOrigin{study.grounds.front().state, millimetres(rise_mm), {}}});
}

MovedPart moved(std::vector<SurfaceId> surfaces, const Vector& shift)
{
    return {"part", std::move(surfaces), {{"there", Placement::shift(shift)}}};
}

SituationFindings found_in(const Study& study, unsigned threads = 0)
{
    return find_situations(study, degrees(5), {.threads = threads, .stop = {}, .progress = {}});
}

/// The places of what was found in that state or, where it is empty, with parts moved.
std::vector<std::size_t> information(const SituationFindings& found, const std::string& state)
{
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < found.situations.size(); ++i)
        if (const Situation& s = found.situations[i];
            !s.is_verdict && s.state == state && s.moved.has_value() == state.empty())
            places.push_back(i);
    return places;
}

double least_mm2(const CheckFindings& check)
{
    return in_mm2(check.deciding_verdict().least_visible);
}

RuleRow of_moved_parts()
{
    RuleRow row = made_row("half", MostHidden{0.5}, 0, 0, 0, 0);
    row.of_moved_parts = true;
    row.answered_by = AnsweredBy::each;
    return row;
}

} // namespace

TEST_CASE("a lower ride height brings the field of low lamps, as information", "[judgement]")
{
    RuleRow row =
        in_state(made_row("row", LeastArea{square_millimetres(1)}, -10, 10, -15, 15), "design");
    row.relaxations.push_back({{{.quantity = Measured::h_plane_height, .below = millimetres(780)}},
                               Field{{rectangle(-10, 10, -5, 15)}},
                               {}});
    Study study = asking(lamp_alone(lens()), "row", {row});
    study.grounds.front().state = "design";
    add_state(study, "lowered", -25);
    add_state(study, "a little lower", -10);
    const SituationFindings found = found_in(study);
    REQUIRE(found.situations.size() == 3);
    CHECK(found.situations[0].is_verdict);
    CHECK_FALSE(found.at(0).deciding_verdict().relaxation);
    const auto lowered = information(found, "lowered");
    REQUIRE(lowered.size() == 1);
    const LampVerdict& low = found.at(lowered.front()).deciding_verdict();
    CHECK(low.relaxation);
    CHECK(in_mm(found.found.looks[low.look].axis_height) == Approx(775));
    CHECK(in_degrees(low.field.rectangles.front().v_least) == Approx(-5));
    const auto little = information(found, "a little lower");
    REQUIRE(little.size() == 1);
    CHECK_FALSE(found.at(little.front()).deciding_verdict().relaxation);
}

TEST_CASE("the field stays level with the ground when the body pitches", "[judgement]")
{
    // A ledge ahead of the lens hides what lies below z = -20 + 40 tan(-e) seen from the elevation
    // e against the body; with the nose up by p, V counts e + p.
    const double nose_up = 3, ahead = 40;
    Study study = asking(lamp_behind(lens(), {wall(ahead, -300, 300, -300, -20)}), "row",
                         {made_row("row", LeastArea{square_millimetres(1)}, 0, 0, -10, -10)});
    const Ground& level = study.grounds.front().ground;
    const Placement turn = Placement::turn(Point(0, 0, 0), study.vehicle.left(), degrees(nose_up));
    study.grounds.push_back({"nose up",
                             {turn(level.on), turn(level.up)},
                             StateOrigin{study.grounds.front().state, {}, degrees(nose_up)}});
    CHECK(study.grounds.back().ground.up.dot(study.vehicle.forward.vector()) > 0);
    const SituationFindings found = found_in(study);
    const auto seen = [&](double elevation) {
        return width * (height - ahead * tan(degrees(-elevation))) * cos(degrees(elevation));
    };
    CHECK(least_mm2(found.at(0)) == Approx(seen(-10)).margin(0.01));
    const auto pitched = information(found, "nose up");
    REQUIRE(pitched.size() == 1);
    CHECK(least_mm2(found.at(pitched.front())) == Approx(seen(-10 - nose_up)).margin(0.01));
}

TEST_CASE("a check is not repeated in the state that its rows name", "[judgement]")
{
    const RuleRow row =
        in_state(made_row("row", LeastArea{square_millimetres(1)}, 0, 0, 0, 0), "unladen");
    Study study = asking(lamp_alone(lens()), "row", {row});
    study.grounds.front().state = "unladen";
    study.grounds.push_back({"curb", study.grounds.front().ground});
    const SituationFindings found = found_in(study);
    REQUIRE(found.situations.size() == 2);
    CHECK(found.situations[0].is_verdict);
    CHECK(found.situations[1].state == "curb");
    CHECK_FALSE(found.situations[1].is_verdict);
}

TEST_CASE("half of a lamp may be hidden by a part in a fixed position, and no more", "[judgement]")
{
    for (const double hidden_share : {0.4, 0.49, 0.51, 0.7}) {
        // Drawn far outboard; moved, its edge stands at that share of the lens.
        const double edge = width / 2 - hidden_share * width;
        Study study = asking(lamp_behind(lens(), {wall(100, 500, 800, -300, 300)}), "half",
                             {of_moved_parts()});
        study.moved_parts.push_back(moved({SurfaceId{1}}, Vector(0, edge - 500, 0)));
        const SituationFindings found = found_in(study);
        INFO(hidden_share);
        CHECK(found.at(0).outcome == Outcome::met); // as drawn
        const auto verdict = std::find_if(found.situations.begin(), found.situations.end(),
                                          [](const auto& s) { return s.is_verdict && s.moved; });
        REQUIRE(verdict != found.situations.end());
        const auto& check = found.at(static_cast<std::size_t>(verdict - found.situations.begin()));
        CHECK(check.outcome == (hidden_share > 0.5 ? Outcome::not_met : Outcome::met));
        CHECK(in_mm2(check.deciding_verdict().hidden) ==
              Approx(hidden_share * width * height).margin(0.01));
    }
}

TEST_CASE("a field with a part moved is information, and no lamp is asked twice", "[judgement]")
{
    Study study = asking(
        lamp_behind(lens(), {wall(100, 500, 800, -300, 300)}), "row",
        {made_row("row", LeastArea{square_millimetres(2000)}, 0, 0, 0, 0), of_moved_parts()});
    study.checks.push_back(study.checks.front());
    study.checks.back().name = "again";
    study.moved_parts.push_back(moved({SurfaceId{1}}, Vector(0, -500, 0)));
    const SituationFindings found = found_in(study);
    REQUIRE(found.situations.size() == 5); // two as drawn, one row of moved parts, two fields
    CHECK(found.at(0).outcome == Outcome::met);
    const auto there = information(found, "");
    REQUIRE(there.size() == 2);
    CHECK(found.at(there.front()).outcome == Outcome::not_met);
    CHECK(least_mm2(found.at(there.front())) == Approx(width / 2 * height).margin(0.01));
}

TEST_CASE("what is ignored as drawn is in the way where it is moved to", "[judgement]")
{
    Study study = asking(lamp_behind(lens(), {wall(100, 0, 300, -300, 300)}), "row",
                         {made_row("row", LeastArea{square_millimetres(2000)}, 0, 0, 0, 0)});
    study.surfaces[SurfaceId{1}].role = Role::ignored;
    study.moved_parts.push_back(moved({SurfaceId{1}}, Vector::Zero()));
    const SituationFindings found = found_in(study);
    CHECK(least_mm2(found.at(0)) == Approx(width * height).margin(0.01));
    const auto there = information(found, "");
    REQUIRE(there.size() == 1);
    CHECK(least_mm2(found.at(there.front())) == Approx(width / 2 * height).margin(0.01));
}

TEST_CASE("what is found is the same for any number of threads", "[judgement]")
{
    Study study = asking(lamp_behind(lens(), {wall(100, 5, 300, -300, 300)}), "row",
                         {made_row("row", LeastArea{square_millimetres(900)}, -40, 40, -10, 10)});
    add_state(study, "lowered", -25);
    study.moved_parts.push_back(moved({SurfaceId{1}}, Vector(0, -9, 3)));
    const SituationFindings one = found_in(study, 1), three = found_in(study, 3);
    REQUIRE(one.situations.size() == three.situations.size());
    for (std::size_t i = 0; i < one.situations.size(); ++i) {
        CHECK(one.at(i).outcome == three.at(i).outcome);
        CHECK(least_mm2(one.at(i)) == least_mm2(three.at(i)));
    }
}
