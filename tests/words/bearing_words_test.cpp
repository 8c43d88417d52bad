#include "words/bearing_words.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

constexpr BearingSpeech left_front{ReferenceAxis::forward, Side::left};

std::string words(double h, double v, const BearingSpeech& speech = left_front)
{
    return bearing_words({degrees(h), degrees(v)}, speech);
}

std::string range(double h_least, double h_most, double v_least, double v_most)
{
    return range_words({degrees(h_least), degrees(h_most), degrees(v_least), degrees(v_most)},
                       left_front);
}

} // namespace

TEST_CASE("a bearing reads as one points", "[words]")
{
    CHECK(words(-41, -6) == "41 deg inboard, 6 deg down");
    CHECK(words(80, 15) == "80 deg outboard, 15 deg up");
    CHECK(words(0, 0) == "straight ahead, level");
    CHECK(words(-0.5, 0) == "0.5 deg inboard, level");
}

TEST_CASE("left and right lamps speak alike", "[words]")
{
    CHECK(words(-45, 0, {ReferenceAxis::forward, Side::right}) == words(-45, 0));
}

TEST_CASE("an axis that points elsewhere has its own words", "[words]")
{
    CHECK(words(0, 0, {ReferenceAxis::rearward, Side::left}) == "straight behind, level");
    CHECK(words(0, 0, {ReferenceAxis::outboard, Side::left}) == "straight out to the side, level");
    CHECK(words(30, 0, {ReferenceAxis::outboard, Side::left}) == "30 deg to the front, level");
    CHECK(words(-30, 0, {ReferenceAxis::outboard, Side::left}) == "30 deg to the rear, level");
    CHECK(words(10, 0, {ReferenceAxis::rearward, Side::median}) == "10 deg to the left, level");
}

TEST_CASE("an angle that is printed as 0 has no side", "[words]")
{
    CHECK(words(-1e-9, 1e-9) == "straight ahead, level");
}

TEST_CASE("a range names its sides once if both ends have the same", "[words]")
{
    CHECK(range(-45, -38, -15, 15) == "45 to 38 deg inboard, 15 down to 15 up");
    CHECK(range(-45, 80, -15, -5) == "45 deg inboard to 80 deg outboard, 15 to 5 down");
    CHECK(range(0, 80, 0, 15) == "straight ahead to 80 deg outboard, level to 15 up");
    CHECK(range(-45, -45, -15, 15) == "45 deg inboard, 15 down to 15 up");
    CHECK(range(0, 0, -15, 15) == "straight ahead, 15 deg down to 15 deg up");
    CHECK(range(-45, -45, 10, 10) == "45 deg inboard, 10 deg up");
}

TEST_CASE("a notched field names both its rectangles", "[words]")
{
    const Field notched{{{degrees(-45), degrees(80), degrees(0), degrees(15)},
                         {degrees(-20), degrees(80), degrees(-15), degrees(0)}}};
    CHECK(field_words(notched, left_front) ==
          "45 deg inboard to 80 deg outboard, level to 15 up and 20 deg inboard to 80 deg "
          "outboard, 15 down to level");
}

TEST_CASE("figures carry the signs of the convention", "[words]")
{
    CHECK(bearing_figures({degrees(-45), degrees(10)}) == "H -45, V 10");
}
