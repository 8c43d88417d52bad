#include "model/usual_axis.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a lamp is looked at from where it signals to", "[model]")
{
    CHECK(usual_axis(LampFunction::front_indicator) == ReferenceAxis::forward);
    CHECK(usual_axis(LampFunction::stop) == ReferenceAxis::rearward);
    CHECK(usual_axis(LampFunction::side_marker) == ReferenceAxis::outboard);
}
