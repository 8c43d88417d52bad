#include "report/moved_lamp_json.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("the map of moves is a table of both ways, outcome and margin", "[report]")
{
    const MoveMap map{{MoveWay::forward, MoveWay::turn},
                      {-5, 0},
                      {0, 2.5},
                      {{Outcome::not_met, -0.25},
                       {Outcome::not_met, -0.1},
                       {Outcome::undecided, 0},
                       {Outcome::met, 0.125}}};
    CHECK(move_map_csv(map) == "forward_mm,turn_deg,outcome,relative_margin\n"
                               "-5,0,not_met,-0.25\n"
                               "0,0,not_met,-0.1\n"
                               "-5,2.5,undecided,0\n"
                               "0,2.5,met,0.125\n");
}
