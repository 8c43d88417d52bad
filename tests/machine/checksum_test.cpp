#include "machine/checksum.h"

#include <catch2/catch.hpp>

using namespace glim;

// The values of "" and "a" are those of the published test vectors of FNV-1a, 64 bits (from
// memory).
TEST_CASE("a checksum is FNV-1a of 64 bits", "[machine]")
{
    CHECK(checksum_of("") == "cbf29ce484222325");
    CHECK(checksum_of("a") == "af63dc4c8601ec8c");
    CHECK(checksum_of("foobar") == "85944171f73967e8");
}
