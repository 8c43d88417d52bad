#include "report/run_facts.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;

TEST_CASE("facts count places from the study's folder, wherever that is", "[report]")
{
    Study study;
    study.file = "/some/where/a study.toml";
    study.warnings = {{{"/some/where/a study.toml", 7, 2, {}}, "odd", ""},
                      {{"/some/meshes/nose.obj", 1, 0, {}}, "odd", ""}};
    const RunFacts facts = run_facts(study, "0.1.0", "a command");
    CHECK(facts.study == "a study.toml");
    CHECK(facts.warnings[0].place.words() == "a study.toml:7:2");
    CHECK(facts.warnings[1].place.words() == "../meshes/nose.obj:1");
}

TEST_CASE("a study named without a folder keeps its places", "[report]")
{
    Study study;
    study.file = "study.toml";
    study.warnings = {{{"study.toml", 7, 2, {}}, "odd", ""}};
    CHECK(run_facts(study, "", "").warnings[0].place.words() == "study.toml:7:2");
}

TEST_CASE("facts have the user's own names, of files, lamps and checks", "[report]")
{
    Study study;
    study.file = "/some/where/5 deg.toml";
    study.title = "a title";
    study.files = {{FileUse::mesh, "8 mm2.obj", {}}};
    study.checks.resize(1);
    study.checks.front().name = "a check";
    const std::vector<std::string> names = run_facts(study, "", "the command").names;
    for (const char* name : {"5 deg.toml", "a title", "8 mm2.obj", "a check", "the command"})
        CHECK(std::find(names.begin(), names.end(), name) != names.end());
}
