#include "words/added_lamp_words.h"

#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

struct Told {
    Study study;
    AddedLampAnswer answer;
};

/// An answer as if found on the second surface of a small study.
Told made_answer()
{
    Told told{lamp_behind(plate(Point::Zero(), 60, 40), {wall(5, -600, -60, -300, 300)}), {}};
    told.study.tables.emplace_back();
    told.study.checks.push_back({"across", 0, "across", {LampId{0}}});
    AddedLampAnswer& answer = told.answer;
    answer.checks = {0};
    answer.helped = LampId{0};
    answer.missing = 7;
    answer.step = degrees(5);
    answer.counts = {.all = 40,
                     .no_room_by_rules = 4,
                     .serve_none = 6,
                     .serve_some = 10,
                     .serve_all = 20,
                     .alone = 12};
    AddedPlace place;
    place.lens = {plate(Point::Zero(), 50, 25), SurfaceId{1}};
    place.seat.centre = Point(5, -300, 12.34);
    place.width = millimetres(50);
    place.height = millimetres(25);
    place.face = square_millimetres(1250);
    place.too_small = millimetres(49.9);
    place.outcomes = {Outcome::met};
    answer.alone = {place};
    return told;
}

} // namespace

TEST_CASE("an added lamp is told with its place, its size and the check's word on it", "[words]")
{
    Told told = made_answer();
    AddLampTask task;
    task.width_to_height = 2;
    const std::string text = added_lamp_words(told.answer, told.study, task);
    INFO(text);
    for (const char* words :
         {"answers `across` alone: 1250 mm2 of lens", "x 5, y -300, z 12.3 mm (vehicle)",
          "50 mm wide, 25 mm high", "49.9 mm wide is not enough", "met: `across`",
          "12 every direction of every row"})
        CHECK(text.find(words) != std::string::npos);
}

TEST_CASE("a lamp that only fills the gap is labelled as such", "[words]")
{
    Told told = made_answer();
    told.answer.filling = told.answer.alone;
    told.answer.filling.front().outcomes.clear();
    told.answer.alone.clear();
    const std::string text = added_lamp_words(told.answer, told.study, {});
    INFO(text);
    CHECK(text.find("No place was found where one more lamp alone answers `across`") == 0);
    CHECK(text.find("only where the rule lets lamps answer together") != std::string::npos);
    CHECK(text.find("no check can confirm it") != std::string::npos);
}

TEST_CASE("what rows of light and tables ask of an added lamp is repeated", "[words]")
{
    Told told = made_answer();
    LightAsked light;
    light.row.id = "v-c";
    light.everywhere = candelas(0.3);
    told.answer.light = {light};
    told.answer.by_tables = {"of the same type"};
    const std::string text = added_lamp_words(told.answer, told.study, {});
    CHECK(text.find("row `v-c` asks 0.3 cd of it in every direction") != std::string::npos);
    CHECK(text.find("What the table says of added lamps: of the same type.") != std::string::npos);
}
