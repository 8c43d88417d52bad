#include "words/light_words.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("light is told to four digits or so", "[words]")
{
    CHECK(intensity_words(candelas(0.05)) == "0.05 cd");
    CHECK(intensity_words(candelas(0.30049)) == "0.3005 cd");
    CHECK(intensity_words(candelas(3.14159)) == "3.142 cd");
    CHECK(intensity_words(candelas(212.449)) == "212.4 cd");
    CHECK(intensity_words(candelas(12345.6)) == "12346 cd");
    CHECK(bare_intensity(candelas(0)) == "0");
    CHECK(column_intensity(candelas(3), candelas(250)) == "3.00");
    CHECK(column_intensity(candelas(0.3), candelas(0.5)) == "0.3000");
    CHECK(flux_words(lumens(13.2749)) == "13.27 lm");
}
