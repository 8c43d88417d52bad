#include "report/write_results.h"

#include "machine/temporary_folder.h"
#include "report/directions_csv.h"
#include "report/made_findings.h"
#include "report/summary.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("results appear as four files and a marker that lists them", "[report]")
{
    const test::TemporaryFolder home;
    NewFolder folder(home / "results");
    write_results(test::made_findings(), test::made_facts(), folder);
    CHECK(test::read(home / "results/directions.csv") == directions_csv(test::made_findings()));
    CHECK(test::read(home / "results/summary.txt") ==
          summary(test::made_findings(), test::made_facts()));
    const std::string marker = test::read(home / "results/.cornerglim");
    for (const char* name : {"result.json", "directions.csv", "verdicts.csv", "summary.txt"}) {
        CHECK(marker.find(std::string(name) + "\n") != std::string::npos);
        CHECK(!test::read(home / "results" / name).empty());
    }
    CHECK(home.entries() == 1);
}
