#include "words/table_words.h"

#include "report/rule_json.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

RuleTable made_table()
{
    RuleRow row;
    row.id = "inboard";
    row.title = "A made row";
    row.citation = {Provenance::second_hand, "a quotation", "clause 4"};
    row.functions = {LampFunction::front_indicator};
    row.field = {{{degrees(-45), degrees(45), degrees(-15), degrees(15)}}};
    row.criterion = LeastArea{square_millimetres(1250)};
    row.when = {{Measured::overall_width, {}, millimetres(2032)}};
    row.relaxations = {{.when = {{Measured::axis_height, {}, millimetres(750)}},
                        .field = {{{degrees(-45), degrees(45), degrees(-5), degrees(15)}}},
                        .citation = {Provenance::read, "the text", ""}}};
    return {.name = "made",
            .regulation = "no regulation",
            .edition = "1st",
            .title = "A made table",
            .rows = {row},
            .rules = {{"all", "Everything", Combine::all_of, {"inboard"}}}};
}

} // namespace

TEST_CASE("a table is shown with every figure and its provenance", "[report]")
{
    CHECK(table_words(made_table()) == R"(made: no regulation, 1st
A made table

Rules
  all  Everything: all of `inboard`

Row inboard: A made row
  asks         at least 1250 mm2 in view in every direction
  field        45 deg inboard to 45 deg outboard, 15 down to 15 up
  axis         forward
  lamps        front direction indicator
  answered by  one lamp alone
  own parts    those approved with the lamp are in the way like any other
  only where   overall width below 2032 mm
  relaxed to   45 deg inboard to 45 deg outboard, 5 down to 15 up, where height of the axis of
               reference below 750 mm
               read in the source named; the text
  source       second-hand: check the edition; a quotation (clause 4)

This informs; it does not certify. The lighting regulation in force, local codes and a homologation
engineer decide.
)");
}

TEST_CASE("the list of tables counts how well figures are known", "[report]")
{
    CHECK(tables_words({made_table()}, {.columns = 200}) ==
          "made\n  regulation  no regulation, 1st\n  holds       A made table\n"
          "  figures     1 row: 1 second-hand: check the edition\n\n" +
              std::string(caution) + "\n");
}

TEST_CASE("a table's JSON has rows and rules", "[report]")
{
    const std::string json = text_of(table_json(made_table()));
    CHECK(json.find(R"("provenance": "second-hand")") != std::string::npos);
    CHECK(json.find(R"("below_mm": 2032.0)") != std::string::npos);
    CHECK(json.find(R"("parts": ["inboard"])") != std::string::npos);
}
