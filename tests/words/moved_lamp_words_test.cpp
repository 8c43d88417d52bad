#include "words/moved_lamp_words.h"

#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

Study made_study()
{
    Study study = lamp_alone(plate(Point::Zero(), 60, 40));
    study.tables.emplace_back();
    study.checks.push_back({"across", 0, "across", {LampId{0}}});
    return study;
}

MovedLampAnswer made_answer()
{
    MovedLampAnswer answer;
    answer.checks = {0};
    answer.step = degrees(5);
    answer.tried = 77;
    answer.surfaces = {SurfaceId{0}};
    answer.ways = {{MoveWay::forward, true, 4.25, millimetres(4.25)},
                   {MoveWay::turn, false, std::nullopt, {}}};
    LampMove move;
    move[MoveWay::forward] = 2.1;
    move[MoveWay::outboard] = -2;
    answer.least = move;
    answer.farthest = millimetres(2.9);
    answer.confirmed = {Outcome::met};
    return answer;
}

} // namespace

TEST_CASE("a move is told with its senses, and what does not move is not", "[words]")
{
    LampMove move;
    CHECK(move_words(move) == "not at all");
    move[MoveWay::up] = -1.5;
    move[MoveWay::turn] = -3;
    CHECK(move_words(move) == "1.5 mm down and turned 3 deg to look more inboard");
}

TEST_CASE("the least move found is told with how far the lit face goes and the check's word",
          "[words]")
{
    const std::string text = moved_lamp_words(made_answer(), made_study(), {});
    INFO(text);
    for (const char* words :
         {"Moved 2.1 mm forward and 2 mm inboard, `indicator` meets `across`.",
          "moves 2.9 mm where it moves farthest", "met: `across`", "4.25 mm", "not within 10 deg"})
        CHECK(text.find(words) != std::string::npos);
}

TEST_CASE("where no move is enough, the answer says so", "[words]")
{
    MovedLampAnswer answer = made_answer();
    answer.least.reset();
    CHECK(moved_lamp_sentence(answer, made_study()).find("No move of `indicator` was found") == 0);
    answer.met_as_drawn = true;
    CHECK(moved_lamp_sentence(answer, made_study()).find("it may stay") != std::string::npos);
}
