#include "words/capitalised.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("the first letter alone becomes a capital, whatever it is", "[words]")
{
    CHECK(capitalised("least 784 mm2") == "Least 784 mm2");
    CHECK(capitalised("Least") == "Least");
    CHECK(capitalised("12 deg") == "12 deg");
    CHECK(capitalised("\u00e9clair") == "\u00e9clair");
    CHECK(capitalised("").empty());
}
