#include "input/rule_points.h"

#include "input/bad_files.h"
#include "input/read_rule_table.h"

using namespace glim;
using namespace glim::test;

namespace {

std::string table_with(const std::string& criterion, const std::string& more = "")
{
    return "format = 1\nregulation = \"made\"\n[[row]]\nid = \"a\"\nprovenance = \"memory\"\n"
           "source = \"made\"\n" +
           more + "criterion = { kind = \"point_table\", " + criterion + " }\n";
}

RuleRow row_of(const std::string& criterion, const std::string& more = "")
{
    return parse_rule_table(table_with(criterion, more), "t.toml", "t").rows.front();
}

LightTable points_of(const std::string& criterion, const std::string& more = "")
{
    return std::get<LightTable>(row_of(criterion, more).criterion);
}

std::string said_of(const std::string& criterion, const std::string& more = "")
{
    return complaints_of([&] { row_of(criterion, more); });
}

LightPoint point(double h, double v, double cd) { return {{degrees(h), degrees(v)}, candelas(cd)}; }

} // namespace

TEST_CASE("points are read as directions with their candela, and are the row's field", "[input]")
{
    const RuleRow row = row_of("cd = [[0, 0, 10], [5, -10, 2.5]]");
    CHECK(std::get<LightTable>(row.criterion).points ==
          std::vector<LightPoint>{point(0, 0, 10), point(5, -10, 2.5)});
    CHECK(row.field.rectangles.size() == 2);
    CHECK(row.field.holds({degrees(5), degrees(-10)}));
    CHECK(!row.field.holds({degrees(-5), degrees(-10)}));
    CHECK(row.approved_parts == ApprovedParts::ignored);
}

TEST_CASE("percent are of the intensity on the axis, and mirrored points stand on both sides",
          "[input]")
{
    const LightTable table = points_of("axis_cd = 4, mirrored = true, percent = [[0, 0, 100], "
                                       "[5, 0, 90]]");
    CHECK(table.points ==
          std::vector<LightPoint>{point(0, 0, 4), point(5, 0, 3.6), point(-5, 0, 3.6)});
    CHECK(table.axis == candelas(4));
}

TEST_CASE("points of a table that counts H inboard are turned", "[input]")
{
    CHECK(points_of("cd = [[20, 5, 1]]", "positive_h = \"inboard\"\n").points ==
          std::vector<LightPoint>{point(-20, 5, 1)});
}

TEST_CASE("groups have totals, and their points a floor", "[input]")
{
    const LightTable table = points_of("floor = 0.6, groups = [{ name = \"1\", total = 30, cd = "
                                       "[[0, 0, 10], [5, 0, 20]] }]");
    REQUIRE(table.groups.size() == 1);
    CHECK(table.groups[0].total == candelas(30));
    CHECK(least_toward(table, {degrees(5), degrees(0)}) == candelas(12));
    CHECK(!least_toward(table, {degrees(6), degrees(0)}));
    CHECK(directions_of(table).size() == 2);
}

TEST_CASE("a relaxed field keeps the points that it holds", "[input]")
{
    const std::string table = table_with("cd = [[0, 0, 10], [0, -5, 5], [0, -10, 1]]") +
                              "[[row.relaxed]]\nwhen = [{ quantity = \"h_plane_height\", below = "
                              "750 }]\nfield = { h = [-90, 90], v = [-5, 90] }\n"
                              "provenance = \"memory\"\nsource = \"made\"\n";
    const RuleRow row = parse_rule_table(table, "t.toml", "t").rows.front();
    REQUIRE(row.relaxations.size() == 1);
    CHECK(row.relaxations[0].field.rectangles.size() == 2);
    CHECK(!row.relaxations[0].field.holds({degrees(0), degrees(-10)}));
}

TEST_CASE("points that are none, or not given in one way, are complaints", "[input]")
{
    CHECK(said_of("cd = [[0, 0]]") ==
          "t.toml:7:43: a point of `criterion` of [[row]] `a` is no direction with a figure\n"
          "    write [h, v, cd], h within 180 and v within 90 degrees, the figure above 0\n");
    CHECK(said_of("cd = [[0, 95, 1]]").find("is no direction with a figure") != std::string::npos);
    CHECK(said_of("cd = [[0, 0, 1], [0, 0, 2]]").find("is there already") != std::string::npos);
    CHECK(said_of("percent = [[0, 0, 1]]").find("has one of `percent` and `axis_cd` alone") !=
          std::string::npos);
    CHECK(said_of("floor = 0.6, cd = [[0, 0, 1]]").find("has a floor without groups") !=
          std::string::npos);
    CHECK(said_of("mirrored = false").find("does not give its points in one way") !=
          std::string::npos);
    CHECK(said_of("cd = [[0, 0, 1]]", "field = { h = [0, 1], v = [0, 1] }\n")
              .find("the points of the criterion are the directions") != std::string::npos);
}

TEST_CASE("a multiplier comes from a gap of the same table that gives one", "[input]")
{
    CHECK(said_of("cd = [[0, 0, 1]], multiplied_by = \"gap\"")
              .find("is multiplied by `gap`, which gives no multiplier") != std::string::npos);
    const std::string gap =
        "[[row]]\nid = \"gap\"\nprovenance = \"memory\"\nsource = \"made\"\ncriterion = { kind = "
        "\"gap\", to = [\"dipped_beam\"], from = \"edge\", gives = \"multiplier\", steps = [{ "
        "at_least = 0, follows = \"2\" }] }\n";
    const std::string points = table_with("cd = [[0, 0, 1]], multiplied_by = \"gap\"");
    CHECK(parse_rule_table(points + gap, "t.toml", "t").rows.size() == 2);
    std::string wrong = gap;
    wrong.replace(wrong.find("\"2\""), 3, "\"b\"");
    CHECK(complaints_of([&] {
              parse_rule_table(points + wrong, "t.toml", "t");
          }).find("\"b\" is no multiplier") != std::string::npos);
}

TEST_CASE("only a row that can end in proof due names a proof", "[input]")
{
    const std::string proof = "proof_by = { table = \"un-r148\", rule = \"stop\" }\n";
    CHECK(said_of("cd = [[0, 0, 1]]", proof).find("never asks for a proof") != std::string::npos);
    const std::string free = "format = 1\nregulation = \"made\"\n[[row]]\nid = \"a\"\n"
                             "provenance = \"memory\"\nsource = \"made\"\npoints = [[0, 0]]\n" +
                             proof + "criterion = { kind = \"no_obstacle\" }\n";
    const RuleRow row = parse_rule_table(free, "t.toml", "t").rows.front();
    REQUIRE(row.proof);
    CHECK(row.proof->table == "un-r148");
    CHECK(row.proof->rule == "stop");
}
