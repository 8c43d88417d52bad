#include "report/csv.h"

#include <catch2/catch.hpp>

using namespace glim;

// RFC 4180, section 2, rules 5 to 7.
TEST_CASE("a cell is quoted only where the format needs it", "[report]")
{
    CHECK(csv_cell("nose") == "nose");
    CHECK(csv_cell("nose, left") == "\"nose, left\"");
    CHECK(csv_cell("the \"nose\"") == "\"the \"\"nose\"\"\"");
    CHECK(csv_cell("two\nlines") == "\"two\nlines\"");
}

TEST_CASE("a row keeps its empty cells and ends with one line feed", "[report]")
{
    CHECK(csv_row({"a", "", "b,c"}) == "a,,\"b,c\"\n");
    CHECK(csv_row({"", ""}) == ",\n");
}
