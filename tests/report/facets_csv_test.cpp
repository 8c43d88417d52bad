#include "report/facets_csv.h"

#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("every facet in the way has a row, ranked within its surface", "[report]")
{
    CHECK(
        facets_csv(test::made_findings()) ==
        R"(check,row,lamp,side,surface,twin,facet,rank,taken_at_worst_mm2,first_at_worst_mm2,mean_taken_mm2,mean_first_mm2,centre_x_mm,centre_y_mm,centre_z_mm
across,inboard,indicator,left,nose,yes,7,1,1299.75,1200,990,980.5,212.5,-655,640
across,inboard,indicator,left,nose,yes,3,2,0,0,10,0,215,-660,650
across,inboard,indicator,left,"badge, ""glim""",no,0,1,99.75,99.75,50,50,180,0,700
)");
}

TEST_CASE("where no direction fails the means are empty", "[report]")
{
    Findings findings = test::made_findings();
    for (Blocker& blocker : findings.checks[0].rows[0].lamps[0].blockers)
        for (FacetShare& share : blocker.facets)
            share.mean.reset();
    CHECK(facets_csv(findings).find("nose,yes,7,1,1299.75,1200,,,212.5,-655,640\n") !=
          std::string::npos);
}
