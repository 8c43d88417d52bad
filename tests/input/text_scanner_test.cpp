#include "input/text_scanner.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

using Lines = std::vector<std::vector<std::string>>;

Lines lines_of(std::string_view text, TextRules rules = {})
{
    Lines lines;
    for (TextScanner scanner(text, rules); !scanner.at_end(); scanner.end_line()) {
        lines.emplace_back();
        for (auto word = scanner.word(); !word.empty(); word = scanner.word())
            lines.back().emplace_back(word);
    }
    return lines;
}

std::string place_of(std::string_view text, std::string_view part)
{
    return place_in(text, "f", text.substr(text.find(part))).words();
}

constexpr TextRules both{.hash_begins_comment = true, .backslash_joins_lines = true};

} // namespace

TEST_CASE("words stand between blanks, lines between line ends of three kinds", "[input]")
{
    CHECK(lines_of("a  b\tc \n\nd\r\ne\rf") == Lines{{"a", "b", "c"}, {}, {"d"}, {"e"}, {"f"}});
    CHECK(lines_of("").empty());
    CHECK(lines_of("a\n") == Lines{{"a"}});
    CHECK(lines_of("\xef\xbb\xbf"
                   "a") == Lines{{"a"}});
}

TEST_CASE("a comment begins with a word that begins with a hash, where there are comments",
          "[input]")
{
    CHECK(lines_of("a # b\nc#d", both) == Lines{{"a"}, {"c#d"}});
    CHECK(lines_of("a # b") == Lines{{"a", "#", "b"}});
}

TEST_CASE("a backslash at the line's end joins it to the next, where lines may be joined",
          "[input]")
{
    CHECK(lines_of("a \\\nb\\\r\nc \\\rd\ne", both) == Lines{{"a", "b", "c", "d"}, {"e"}});
    CHECK(lines_of("a\\b c\\ d", both) == Lines{{"a\\b", "c\\", "d"}});
    CHECK(lines_of("a \\", both) == Lines{{"a"}});
    CHECK(lines_of("a \\\nb") == Lines{{"a", "\\"}, {"b"}});
    CHECK(lines_of("# a \\\nb\nc", both) == Lines{{}, {"c"}});
}

TEST_CASE("the rest of a line has no blanks before and behind, but those within", "[input]")
{
    TextScanner scanner("solid  upper  lens # 1 \\ \r\nnext");
    CHECK(scanner.word() == "solid");
    CHECK(scanner.rest() == "upper  lens # 1 \\");
    CHECK(scanner.rest().empty());
    scanner.end_line();
    CHECK(scanner.word() == "next");
    CHECK(scanner.at_end());
}

TEST_CASE("a place is counted in lines and in characters", "[input]")
{
    CHECK(place_of("one two", "two") == "f:1:5");
    CHECK(place_of("one\r\ntwo\rthree\n four", "four") == "f:4:2");
    CHECK(place_of("\xef\xbb\xbfone", "one") == "f:1:1");
    CHECK(place_of("\xc3\xa9\xe2\x82\xac x", "x") == "f:1:4");
    CHECK(place_of("a\n", "\n") == "f:1:2");
}

TEST_CASE("the last line is unfinished if nothing ends it", "[input]")
{
    const std::string_view text = "one\ntwo";
    CHECK(is_on_unfinished_line(text, text.substr(4)));
    CHECK_FALSE(is_on_unfinished_line(text, text.substr(0, 3)));
    const std::string_view ended = "two\r";
    CHECK_FALSE(is_on_unfinished_line(ended, ended));
}

TEST_CASE("a word is shown short and printable", "[input]")
{
    CHECK(shown("0,5") == "0,5");
    CHECK(shown(std::string(41, 'x')) == std::string(40, 'x') + "...");
    CHECK(shown(std::string_view("a\0b\x1b\x7f", 5)) == "a\\x00b\\x1b\\x7f");
    CHECK(shown("\xc3\xa9") == "\xc3\xa9");
    CHECK(shown("\xc3(\xff") == "\\xc3(\\xff");
    // A character is not cut in two.
    CHECK(shown(std::string(39, 'x') + "\xc3\xa9"
                                       "yyy") == std::string(39, 'x') + "...");
}

TEST_CASE("text has no control characters but blanks and line ends", "[input]")
{
    CHECK(looks_like_text("v 0 0 0\r\n\tf 1 \xc3\xa9"));
    CHECK_FALSE(looks_like_text(std::string_view("solid\0", 6)));
    CHECK(looks_like_text(std::string(1024, ' ') + '\0'));
}
