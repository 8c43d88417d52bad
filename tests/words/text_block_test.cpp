#include "words/text_block.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("text is broken at blanks and never beyond the columns", "[words]")
{
    CHECK(wrapped("one two three", 7) == "one two\nthree");
    CHECK(wrapped("one two three", 8, 4) == "one two\n    three");
    CHECK(wrapped("one two three", 13) == "one two three");
    CHECK(wrapped("", 10).empty());
}

TEST_CASE("a word too long for a line has one of its own", "[words]")
{
    CHECK(wrapped("a incomprehensible b", 6) == "a\nincomprehensible\nb");
}

TEST_CASE("a character of several bytes is one column wide", "[words]")
{
    CHECK(width_of("Gr\xc3\xbc\xc3\x9f"
                   "e") == 5);
    CHECK(wrapped("\xc3\xbc\xc3\xbc \xc3\xbc\xc3\xbc", 5) == "\xc3\xbc\xc3\xbc \xc3\xbc\xc3\xbc");
}

TEST_CASE("a name from a file cannot steer the terminal", "[words]")
{
    CHECK(harmless("nose\x1b[2J") == "nose?[2J");
    CHECK(harmless("two\nlines\tand\r") == "two lines and ");
    CHECK(harmless("\xc2\x9b"
                   "2J") == "?2J"); // U+009B begins a command, as ESC [ does
    CHECK(harmless("\xc2\xa0") == "\xc2\xa0");
    CHECK(wrapped("a\x07"
                  "b",
                  10) == "a?b");
    CHECK(aligned_rows({{"a\x1b"
                         "b"}}) == std::vector<std::string>{"a?b"});
}

TEST_CASE("labels stand in a column and texts beside them", "[words]")
{
    const std::vector<Labelled> entries{{"lamp", "indicator, left"},
                                        {"least in view", "712 mm2, which is too little"},
                                        {"", "more"}};
    CHECK(labelled_block(entries, 2, {.columns = 32}) == "  lamp           indicator, left\n"
                                                         "  least in view  712 mm2, which\n"
                                                         "                 is too little\n"
                                                         "                 more\n");
}

TEST_CASE("a laid out line keeps its blanks while it fits", "[words]")
{
    CHECK(labelled_block({{"a", "1   2", true}}, 0, {.columns = 8}) == "a  1   2\n");
    CHECK(labelled_block({{"a", "1   2", true}}, 0, {.columns = 7}) == "a  1 2\n");
}

TEST_CASE("figures end under each other and names begin so", "[words]")
{
    CHECK(aligned_rows({{"nose", "1030 mm2"}, {"bonnet", "8 mm2"}, {"x"}}, {1}) ==
          std::vector<std::string>{"nose    1030 mm2", "bonnet     8 mm2", "x"});
}
