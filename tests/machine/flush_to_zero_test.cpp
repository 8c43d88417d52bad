#include "machine/flush_to_zero.h"

#include <catch2/catch.hpp>

#include <limits>

namespace {

float half_of_the_smallest_normal()
{
    volatile float smallest = std::numeric_limits<float>::min();
    return smallest * 0.5F;
}

} // namespace

#if defined(__SSE2__)
TEST_CASE("denormal floats are zero while it lives, and only then", "[machine]")
{
    CHECK(half_of_the_smallest_normal() > 0);
    {
        const glim::FlushToZero flush;
        CHECK(half_of_the_smallest_normal() == 0);
    }
    CHECK(half_of_the_smallest_normal() > 0);
}
#endif
