#include "report/write_results.h"

#include "machine/temporary_folder.h"
#include "report/directions_csv.h"
#include "report/facets_csv.h"
#include "report/summary.h"
#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace glim;

TEST_CASE("results appear as files and a marker that lists them", "[report]")
{
    const test::TemporaryFolder home;
    NewFolder folder(home / "results");
    write_results(test::made_findings(), test::made_study(), test::made_facts(), folder);
    CHECK(test::read(home / "results/directions.csv") == directions_csv(test::made_findings()));
    CHECK(test::read(home / "results/facets.csv") == facets_csv(test::made_findings()));
    CHECK(test::read(home / "results/summary.txt") ==
          summary(test::made_findings(), test::made_facts()));
    const std::string marker = test::read(home / "results/.cornerglim");
    for (const char* name :
         {"result.json", "directions.csv", "verdicts.csv", "facets.csv", "summary.txt",
          "blocking/across.ply", "blocking/across.obj", "blocking/across.mtl"}) {
        CHECK(marker.find(std::string(name) + "\n") != std::string::npos);
        CHECK(!test::read(home / "results" / name).empty());
    }
    CHECK(home.entries() == 1);
}

TEST_CASE("checks whose names make one file name have their own meshes all the same", "[report]")
{
    Findings findings = test::made_findings();
    findings.checks.push_back(findings.checks.front());
    findings.checks[0].name = "across / 45";
    findings.checks[1].name = "Across: 45";
    const test::TemporaryFolder home;
    NewFolder folder(home / "results");
    write_results(findings, test::made_study(), test::made_facts(), folder);
    CHECK(!test::read(home / "results/blocking/across-45.ply").empty());
    CHECK(test::read(home / "results/blocking/Across-45-2.obj").find("mtllib Across-45-2.mtl\n") !=
          std::string::npos);
}

TEST_CASE("where nothing is in the way there is no mesh of it", "[report]")
{
    Findings findings = test::made_findings();
    findings.checks[0].rows[0].lamps[0].blockers.clear();
    const test::TemporaryFolder home;
    NewFolder folder(home / "results");
    write_results(findings, test::made_study(), test::made_facts(), folder);
    CHECK(!std::filesystem::exists(home / "results/blocking"));
}
