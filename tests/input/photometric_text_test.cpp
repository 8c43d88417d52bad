#include "input/photometric_text.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("photometric numbers are plain decimal numbers", "[input]")
{
    CHECK(photometric_number("12.5") == 12.5);
    CHECK(photometric_number("+.5") == 0.5);
    CHECK(photometric_number("-1e-3") == -0.001);
    for (const char* word : {"", "x", "1,5", "1.5x", "+-1", "nan", "inf", "1e10", "0x10", "1e-999"})
        CHECK_FALSE(photometric_number(word));
}

TEST_CASE("a decimal comma is read only where it is allowed", "[input]")
{
    CHECK(photometric_number("12,5", DecimalComma::allowed) == 12.5);
    CHECK(photometric_number("12.5", DecimalComma::allowed) == 12.5);
    CHECK_FALSE(photometric_number("1,2,5", DecimalComma::allowed));
    CHECK_FALSE(photometric_number("1.000,5", DecimalComma::allowed));
}

TEST_CASE("whole numbers are told from others", "[input]")
{
    CHECK(whole_photometric_number("-3") == -3);
    CHECK(whole_photometric_number("3.0") == 3);
    CHECK_FALSE(whole_photometric_number("3.5"));
}

TEST_CASE("notes hold no control characters", "[input]")
{
    CHECK(note_text("a\tb\x1b[31m\x7f") == "a b [31m ");
    CHECK(note_text("\xe9t\xe9") == "\xc3\xa9t\xc3\xa9");
}
