#include "drawing/sight_line.h"

#include "specimens/pictured_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

TEST_CASE("the sight line leads from the middle of what is hidden to the wall", "[drawing]")
{
    const Session session(pictured_study());
    const Findings findings = findings_of(session);
    const auto line =
        sight_line(session.study(), session.scene(), findings.looks.front(), Bearing{});
    REQUIRE(line);
    REQUIRE(line->meets);
    CHECK((line->from - Point(0, 585, 0)).norm() < 1.5); // the inboard half; 1 mm lattice
    CHECK((*line->meets - Point(100, 585, 0)).norm() < 1.5);
    CHECK(line->body->surface == SurfaceId{1});
    CHECK_FALSE(line->body->twin);
}

TEST_CASE("where nothing hides the lamp the sight line is free, from its middle", "[drawing]")
{
    const Session session(pictured_study());
    const Findings findings = findings_of(session);
    const auto line = sight_line(session.study(), session.scene(), findings.looks.front(),
                                 {degrees(60), degrees(0)});
    REQUIRE(line);
    CHECK_FALSE(line->meets);
    CHECK_FALSE(line->body);
    CHECK((line->from - Point(0, 600, 0)).norm() < 1.5);
    CHECK_FALSE(sight_line(session.study(), session.scene(), findings.looks.front(),
                           {degrees(180), degrees(0)}));
}
