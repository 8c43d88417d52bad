#include "input/shipped_tables.h"

#include "input/bad_files.h"

using namespace glim;
using namespace glim::test;

namespace {

const RuleRow& row_of(const RuleTable& table, const std::string& id)
{
    const RuleRow* row = table.row(id);
    if (!row)
        throw std::runtime_error("no row " + id);
    return *row;
}

double least_mm2(const RuleTable& table, const std::string& id)
{
    return in_mm2(std::get<LeastArea>(row_of(table, id).criterion).area);
}

} // namespace

TEST_CASE("the program carries every requirement table, byte for byte", "[input]")
{
    std::size_t files = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(GLIM_SOURCE_DIR "/requirements-tables")) {
        ++files;
        const std::string name = entry.path().stem().string();
        const auto& tables = shipped_tables();
        const auto found = std::find_if(tables.begin(), tables.end(),
                                        [&](const ShippedTable& t) { return t.name == name; });
        INFO(name);
        REQUIRE(found != tables.end());
        CHECK(found->text == read(entry.path()));
    }
    CHECK(files == shipped_table_names().size());
    CHECK(files >= 2);
}

TEST_CASE("every shipped table is sound", "[input]")
{
    for (const std::string& name : shipped_table_names()) {
        INFO(name);
        CHECK(complaints_of([&] { find_rule_table(name, "/nowhere"); }) ==
              "(read without a complaint)");
    }
}

TEST_CASE("a table beside the study goes before the shipped one", "[input]")
{
    const TemporaryFolder folder;
    write(folder / "own-example.toml", "format = 1\nregulation = \"beside\"\n[[row]]\nid = \"a\"\n"
                                       "provenance = \"read\"\nsource = \"s\"\npoints = [[0, 0]]\n"
                                       "criterion = { kind = \"least_area\", mm2 = 1 }\n");
    CHECK(find_rule_table("own-example", folder.path()).regulation == "beside");
    CHECK(find_rule_table("own-example.toml", folder.path()).regulation == "beside");
    CHECK(find_rule_table("own-example", "/nowhere").regulation != "beside");
}

TEST_CASE("an unknown table is told at the place where it is asked for", "[input]")
{
    const std::string said = complaints_of([] {
        find_rule_table("fmvss-109", "", Place{"s.toml", 4, 9, {}});
    });
    CHECK(said == "s.toml:4:9: there is no requirement table `fmvss-109`\n"
                  "    did you mean `fmvss-108`?\n");
}

TEST_CASE("the visibility option by area asks 1250 mm2, less far down for low lamps", "[input]")
{
    const RuleTable table = find_rule_table("fmvss-108", "/nowhere");
    for (const std::string id : {"v-b-front", "v-b-rear"}) {
        CHECK(least_mm2(table, id) == 1250);
        const RuleRow& row = row_of(table, id);
        CHECK(row.citation.provenance == Provenance::memory);
        CHECK(row.answered_by == AnsweredBy::one_alone);
        CHECK(row.field.holds({degrees(-45), degrees(-15)}));
        CHECK(row.field.holds({degrees(45), degrees(15)}));
        REQUIRE(row.relaxations.size() == 1);
        CHECK_FALSE(row.relaxations[0].field.holds({degrees(0), degrees(-6)}));
        CHECK(row.relaxations[0].when.at(0).holds(millimetres(749)));
        CHECK_FALSE(row.relaxations[0].when.at(0).holds(millimetres(750)));
    }
}

TEST_CASE("a front turn signal answers for its axis and for the visibility by area", "[input]")
{
    const RuleTable table = find_rule_table("fmvss-108", "/nowhere");
    std::vector<std::string> ids;
    for (const RuleRow* row : rows_under(table, "front-turn-area"))
        ids.push_back(row->id);
    CHECK(ids ==
          std::vector<std::string>{"front-turn-axis-narrow", "front-turn-axis-wide", "v-b-front"});
    CHECK(least_mm2(table, "front-turn-axis-narrow") == 2200);
    CHECK(least_mm2(table, "front-turn-axis-wide") == 7500);
    CHECK(row_of(table, "front-turn-axis-narrow").when.at(0).holds(millimetres(2031.9)));
    CHECK_FALSE(row_of(table, "front-turn-axis-narrow").when.at(0).holds(millimetres(2032)));
}
