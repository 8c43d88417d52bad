#include "words/table_words.h"

#include "specimens/made_table.h"

#include <catch2/catch.hpp>

using namespace glim;
using test::made_table;

TEST_CASE("a table is shown with every figure and its provenance", "[words]")
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

TEST_CASE("the list of tables counts how well figures are known", "[words]")
{
    CHECK(tables_words({made_table()}, {.columns = 200}) ==
          "made\n  regulation  no regulation, 1st\n  holds       A made table\n"
          "  figures     1 row: 1 second-hand: check the edition\n\n" +
              std::string(caution) + "\n");
}
