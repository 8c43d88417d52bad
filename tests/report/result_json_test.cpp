#include "machine/temporary_folder.h"
#include "report/result_json.h"
#include "specimens/made_findings.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <limits>
#include <stdexcept>

using namespace glim;

namespace {

nlohmann::json read_back(const Findings& findings)
{
    return nlohmann::json::parse(text_of(result_json(findings, test::made_facts())));
}

} // namespace

TEST_CASE("a check begins with what decided it", "[report]")
{
    const nlohmann::json check = read_back(test::made_findings())["checks"][0];
    CHECK(check["outcome"] == "not_met");
    CHECK(check["least_visible_mm2"] == 700.25);
    CHECK(check["margin_mm2"] == -549.75);
    CHECK(check["worst"]["h_deg"] == -45);
    CHECK(check["worst"]["words"] == "45 deg inboard, level");
    CHECK(check["worst"]["exact"] == true);
    CHECK(check["provenance"] == "memory");
    CHECK(check["deciding"]["row"] == "inboard");
    CHECK(check["deciding"]["lamp"] == "indicator");
}

TEST_CASE("areas toward every direction are there, with what sampling said of exact ones",
          "[report]")
{
    const nlohmann::json look = read_back(test::made_findings())["lamps"][0];
    CHECK(look["directions"]["h_deg"] == nlohmann::json({-45, -40, 0}));
    CHECK(look["directions"]["visible_mm2"] == nlohmann::json({700.25, 1249, 3000}));
    CHECK(look["directions"]["low_mm2"] == nlohmann::json({700.24, 1240, 3000}));
    REQUIRE(look["exact"].size() == 1);
    CHECK(look["exact"][0]["at"] == 0);
    CHECK(look["exact"][0]["sampled_visible_mm2"] == 701);
}

TEST_CASE("a field without width has no solid angle rather than none of it", "[report]")
{
    const nlohmann::json rows = read_back(test::made_findings())["checks"][0]["rows"];
    CHECK(rows[0]["lamps"][0]["coverage"]["solid_angle_sr"].is_null());
    CHECK(rows[1]["lamps"][0]["coverage"]["solid_angle_sr"] == 0.4);
}

TEST_CASE("what does not apply is null", "[report]")
{
    Findings findings = test::made_findings();
    CheckFindings& check = findings.checks.front();
    check.deciding.reset();
    for (RowFindings& row : check.rows)
        row.lamps.front() = {};
    const nlohmann::json json = read_back(findings)["checks"][0];
    CHECK(json["deciding"].is_null());
    CHECK(json["worst"].is_null());
    CHECK(json["margin_mm2"].is_null());
    CHECK(json["rows"][0]["lamps"][0]["coverage"].is_null());
    CHECK(json["rows"][0]["lamps"][0]["needed_mm2"].is_null());
}

TEST_CASE("a relaxation that applied is cited", "[report]")
{
    Findings findings = test::made_findings();
    RowFindings& row = findings.checks.front().rows.front();
    row.row.relaxations = {
        {.when = {}, .field = {}, .citation = {Provenance::read, "a text", "2"}}};
    row.lamps.front().relaxation = 0;
    const nlohmann::json json = read_back(findings)["checks"][0]["rows"][0]["lamps"][0];
    CHECK(json["relaxation"]["provenance"] == "read");
    CHECK(json["relaxation"]["source"] == "a text");
}

TEST_CASE("no figure that is not a number gets out", "[report]")
{
    Findings findings = test::made_findings();
    findings.looks.front().lit_face = square_millimetres(std::numeric_limits<double>::quiet_NaN());
    CHECK_THROWS_AS(text_of(result_json(findings, test::made_facts())), std::logic_error);
}

TEST_CASE("results carry the caution, the command, meshes and warnings", "[report]")
{
    const nlohmann::json json = read_back(test::made_findings());
    CHECK(json["caution"] == std::string(caution));
    CHECK(json["command"] == "cornerglim check made.toml");
    CHECK(json["study"] == "made.toml");
    CHECK(json["meshes"][0]["health"]["facets"] == 12);
    CHECK(json["warnings"][0]["place"] == "made.toml:3:1");
    REQUIRE(json["files"].size() == 2);
    CHECK(json["files"][1]["file"] == "corner.obj");
    CHECK(json["files"][1]["use"] == "mesh");
    CHECK(json["files"][1]["bytes"] == 4096);
    CHECK(json["files"][1]["sha256"] == std::string(64, 'b'));
}

namespace {

template <class Words, class Row>
nlohmann::json words_of_column(const Words& words, std::string_view Row::*column)
{
    nlohmann::json all = nlohmann::json::array();
    for (const Row& row : words)
        all.push_back(std::string(row.*column));
    return all;
}

} // namespace

TEST_CASE("the schema knows every word that the results may use", "[report]")
{
    const nlohmann::json types = nlohmann::json::parse(
        test::read(std::string(GLIM_SOURCE_DIR) + "/docs/result.schema.json"))["$defs"];
    CHECK(types["outcome"]["enum"] == words_of_column(outcome_words, &OutcomeWord::key));
    CHECK(types["because"]["enum"] == words_of_column(because_words, &BecauseWord::key));
    CHECK(types["provenance"]["enum"] == words_of_column(provenance_words, &ProvenanceWord::key));
    CHECK(types["function"]["enum"] == words_of_column(function_words, &FunctionWord::key));
    CHECK(types["file"]["properties"]["use"]["enum"] ==
          words_of_column(file_use_words, &FileUseWord::key));
    CHECK(types["axis"]["enum"] == words_of_column(axis_words, &AxisWord::word));
    CHECK(types["row"]["properties"]["answered_by"]["enum"] ==
          words_of_column(answered_by_words, &AnsweredByWord::key));
    CHECK(types["look"]["properties"]["side"]["enum"] ==
          words_of_column(side_words, &SideWord::word));
    CHECK(types["look"]["properties"]["surface_basis"]["enum"] ==
          words_of_column(surface_basis_words, &SurfaceBasisWord::key));
}
