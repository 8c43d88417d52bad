#include "input/read_rule_table.h"

#include "input/bad_files.h"
#include "input/small_study.h"

using namespace glim;
using namespace glim::test;

namespace {

const std::string table_text = R"(format = 1
regulation = "our own"
edition = "first"
added_lamp = "of the same type"

[[row]]
id = "wide"
clause = "1.2"
provenance = "second-hand"
source = "a quotation"
functions = ["stop", "side_marker"]
axis = "rearward"
field = { h = [-45, 80], v = [-15, 10] }
when = [{ quantity = "overall_width", at_least = 1300, below = 2032 }]
criterion = { kind = "least_area", mm2 = 1250 }
approved_parts = "counted"
answered_by = "each"

[[row.relaxed]]
when = [{ quantity = "axis_height", below = 750 }]
fields = [{ h = [-45, 80], v = [0, 10] }, { h = [-20, 80], v = [-15, 0] }]
provenance = "memory"
source = "from memory"

[[rule]]
id = "all"
any_of = ["wide"]
)";

RuleTable parsed(const std::string& text) { return parse_rule_table(text, "own.toml", "own"); }

FieldRectangle rectangle(double h0, double h1, double v0, double v1)
{
    return {degrees(h0), degrees(h1), degrees(v0), degrees(v1)};
}

} // namespace

TEST_CASE("every malformed requirement table is answered with all its complaints", "[input]")
{
    expect_complaints(GLIM_SOURCE_DIR "/tests/bad/tables", 14,
                      [](const std::string& name) { read_rule_table(name); });
}

TEST_CASE("a requirement table is read as it is written", "[input]")
{
    const RuleTable table = parsed(table_text);
    CHECK(table.name == "own");
    CHECK(table.edition == "first");
    CHECK(table.added_lamp == "of the same type");
    REQUIRE(table.row("wide"));
    const RuleRow& row = *table.row("wide");
    CHECK(row.title == "wide");
    CHECK(row.citation.provenance == Provenance::second_hand);
    CHECK(row.citation.source == "a quotation");
    CHECK(row.citation.clause == "1.2");
    CHECK(row.functions == std::vector{LampFunction::stop, LampFunction::side_marker});
    CHECK(row.axis == ReferenceAxis::rearward);
    CHECK(row.field.rectangles == std::vector{rectangle(-45, 80, -15, 10)});
    CHECK(row.when.at(0).at_least == millimetres(1300));
    CHECK(row.when.at(0).below == millimetres(2032));
    CHECK(std::get<LeastArea>(row.criterion).area == square_millimetres(1250));
    CHECK(row.approved_parts == ApprovedParts::counted);
    CHECK(row.answered_by == AnsweredBy::each);
    CHECK(table.rule("all")->combine == Combine::any_of);
}

TEST_CASE("a relaxation has a field, conditions and a source of its own", "[input]")
{
    const RuleTable table = parsed(table_text);
    const Relaxation& relaxed = table.row("wide")->relaxations.at(0);
    CHECK(relaxed.when.at(0).quantity == Measured::axis_height);
    CHECK(relaxed.citation.provenance == Provenance::memory);
    CHECK(relaxed.field.rectangles ==
          std::vector{rectangle(-45, 80, 0, 10), rectangle(-20, 80, -15, 0)});
}

TEST_CASE("a row that counts H inboard is turned as it is read, its relaxations too", "[input]")
{
    const RuleTable table =
        parsed(with(table_text, "axis = \"rearward\"", "positive_h = \"inboard\""));
    CHECK(table.row("wide")->field.rectangles == std::vector{rectangle(-80, 45, -15, 10)});
    CHECK(table.row("wide")->relaxations.at(0).field.rectangles[1] == rectangle(-80, 20, -15, 0));
}

TEST_CASE("points are rectangles of no size, and zero keeps its sign", "[input]")
{
    const RuleTable table = parsed(with(table_text, "field = { h = [-45, 80], v = [-15, 10] }",
                                        "positive_h = \"inboard\"\npoints = [[0, 0], [20, -5]]"));
    const Field& field = table.row("wide")->field;
    CHECK(field.rectangles == std::vector{rectangle(0, 0, 0, 0), rectangle(-20, -20, -5, -5)});
    CHECK_FALSE(std::signbit(in_degrees(field.rectangles[0].h_least)));
}

TEST_CASE("what is left out has its usual meaning", "[input]")
{
    const RuleTable table = parsed("format = 1\nregulation = \"r\"\n[[row]]\nid = \"a\"\n"
                                   "provenance = \"read\"\nsource = \"s\"\npoints = [[0, 0]]\n"
                                   "criterion = { kind = \"least_area\", mm2 = 1 }\n");
    const RuleRow& row = table.rows.at(0);
    CHECK(row.functions.empty());
    CHECK(row.axis == ReferenceAxis::forward);
    CHECK(row.approved_parts == ApprovedParts::counted);
    CHECK(row.answered_by == AnsweredBy::one_alone);
    CHECK(row.relaxations.empty());
}

TEST_CASE("a union of lamps keeps the source that allows it", "[input]")
{
    const RuleTable table =
        parsed(with(table_text, "\"each\"", "\"union\"\nunion_source = \"clause 9\""));
    CHECK(table.row("wide")->answered_by == AnsweredBy::together);
    CHECK(table.row("wide")->union_source == "clause 9");
}

TEST_CASE("a table file is called as its file, and one that is missing is a complaint", "[input]")
{
    const TemporaryFolder folder;
    write(folder / "mine.toml", table_text);
    CHECK(read_rule_table(folder / "mine.toml").name == "mine");
    const std::string said = complaints_of([&] { read_rule_table(folder / "mime.toml"); });
    CHECK(said.find("did you mean `mine.toml`?") != std::string::npos);
}
