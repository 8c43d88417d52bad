#include "words/keep_clear_words.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

KeepClearSpace space(const char* row, double needed_mm2, double shown_mm2)
{
    KeepClearSpace space;
    space.check = "check";
    space.row.id = row;
    space.lamp = "indicator";
    space.needed = square_millimetres(needed_mm2);
    space.least = {{degrees(-45), degrees(15)}, square_millimetres(shown_mm2)};
    space.shows_too_little = is_too_small(space.least.shown, space.needed);
    if (needed_mm2 > 0)
        space.kept = FavouredEdge::upper;
    return space;
}

Study with_wall()
{
    Study study;
    study.surfaces.add(Surface{.name = "wall", .mesh = {}, .clear_for = {}});
    return study;
}

Intrusion by_wall(double mm)
{
    Intrusion intrusion;
    intrusion.surface = {SurfaceId{0}, false};
    intrusion.depth = millimetres(mm);
    intrusion.box.add(Point::Zero());
    return intrusion;
}

} // namespace

TEST_CASE("a lamp that is too small is told before anything else", "[words]")
{
    KeepClear found;
    found.spaces = {space("area", 1250, 453.8)};
    CHECK(keep_clear_sentence(found, Study())
              .find("Too small: with nothing in the way the lamp shows 453.8 mm2 from 45 deg "
                    "inboard, 15 "
                    "deg up (H -45, V 15), where 1250 mm2 are needed (check, area, indicator).") ==
          0);
}

TEST_CASE("what reaches into the space of a row of area is told not to be a failure yet", "[words]")
{
    KeepClear found;
    found.spaces = {space("area", 1250, 3000)};
    CHECK(keep_clear_notes(found).empty());
    found.spaces.front().intrusions.push_back(by_wall(2.58));
    REQUIRE(keep_clear_notes(found).size() == 1);
    CHECK(keep_clear_notes(found).front().find("is not yet a failure") != std::string::npos);
    CHECK(keep_clear_words(found, {}, with_wall()).find("is not yet a failure") !=
          std::string::npos);
    found.spaces = {space("clear", 0, 3000)};
    found.spaces.front().intrusions.push_back(by_wall(2.58));
    CHECK(keep_clear_notes(found).empty());
}

TEST_CASE("the deepest that is told apart is told as that or more", "[words]")
{
    KeepClear found;
    found.spaces = {space("clear", 0, 3000)};
    found.spaces.front().intrusions.push_back(by_wall(500));
    const Study study = with_wall();
    CHECK(keep_clear_sentence(found, study) ==
          "Not clear: `wall` reaches 500 mm or more into the space of check, clear, indicator.");
    CHECK(intrusion_words(found.spaces.front().intrusions.front(), study)
              .find("by up to 500 mm or more along") != std::string::npos);
    CHECK(intrusion_depth_words(millimetres(2.58)) == "2.58 mm");
}

TEST_CASE("what reaches into a space that another way spares is no headline", "[words]")
{
    KeepClear found;
    found.spaces = {space("clear", 0, 3000), space("area", 1250, 3000)};
    found.spaces.front().intrusions.push_back(by_wall(3));
    found.spaces.front().spared = true;
    found.choices = {{"check", {{"clear"}, {"area"}}}};
    CHECK(keep_clear_sentence(found, with_wall()).find("Clear: ") == 0);
    REQUIRE(keep_clear_notes(found).size() == 1);
    CHECK(keep_clear_notes(found).front() ==
          "Of `check` one of these ways is enough: `clear`, or `area`. Not needed, because another "
          "way is clear: `check, clear, indicator`.");
}
