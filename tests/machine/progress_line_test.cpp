#include "machine/progress_line.h"

#include "machine/pseudo_terminal.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <thread>

using namespace glim;
using glim::test::PseudoTerminal;

TEST_CASE("the progress line says what is done, of how many", "[machine]")
{
    CHECK(progress_words("seeing indicator", 1200, 3906, "directions", 80) ==
          "seeing indicator: 1200 of 3906 directions");
}

TEST_CASE("a narrow terminal cuts the line short of its last column, between characters",
          "[machine]")
{
    CHECK(progress_words("seeing", 1, 2, "directions", 11) == "seeing: 1 ");
    // Two bytes a character: four characters and the last column free.
    CHECK(progress_words("\u00e4\u00f6\u00fc\u00df\u00e4", 1, 2, "x", 5) ==
          "\u00e4\u00f6\u00fc\u00df");
    CHECK(progress_words("seeing", 1, 2, "directions", 0) == "");
}

TEST_CASE("a line that is not shown offers no progress to call", "[machine]")
{
    ProgressLine line(false);
    CHECK_FALSE(line.telling("seeing", "directions"));
}

TEST_CASE("the line is shown, not more than ten times a second, and erased at the end", "[machine]")
{
    const PseudoTerminal terminal(80);
    {
        ProgressLine line(true);
        const Progress progress = line.telling("seeing", "directions");
        progress(1, 3);
        progress(2, 3);
        CHECK(terminal.shown() == "\r\x1b[Kseeing: 1 of 3 directions");
        std::this_thread::sleep_for(std::chrono::milliseconds(120));
        progress(3, 3);
        CHECK(terminal.shown() == "\r\x1b[Kseeing: 3 of 3 directions");
    }
    CHECK(terminal.shown() == "\r\x1b[K");
}

TEST_CASE("a line that never showed erases nothing", "[machine]")
{
    const PseudoTerminal terminal(80);
    {
        ProgressLine line(true);
        line.erase();
    }
    CHECK(terminal.shown() == "");
}

TEST_CASE("what is left is told once it can be, in round figures", "[machine]")
{
    CHECK(time_left_words(1, 10, 100).empty());
    CHECK(time_left_words(10, 0, 100).empty());
    CHECK(time_left_words(10, 100, 100).empty());
    CHECK(time_left_words(10, 50, 100) == ", about 10 s left");
    CHECK(time_left_words(10, 18, 100) == ", about 50 s left");
    CHECK(time_left_words(10, 5, 100) == ", about 3 min left");
    CHECK(time_left_words(10, 999, 1000) == ", about 1 s left");
}
