#include "drawing/legend.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

LegendEntry entry(const std::string& words)
{
    return {[](Canvas&, const Rect&) {}, words};
}

double height_of(std::vector<LegendEntry> entries, double width)
{
    return Legend(std::move(entries), width).height();
}

} // namespace

TEST_CASE("a legend is one line while it fits and more where it does not", "[drawing]")
{
    const double one = height_of({entry("nose")}, 400);
    CHECK(height_of({entry("nose"), entry("wing")}, 400) == one);
    CHECK(height_of({entry("nose"), entry("wing")}, 60) > 2 * one);
}

TEST_CASE("a name of any length stays within the legend", "[drawing]")
{
    const std::string name(400, 'w');
    const double line = height_of({entry("w")}, 200);
    CHECK(height_of({entry(name)}, 200) < 3.5 * line);
    CHECK(height_of({entry(name)}, 200) > 2.5 * line);
}
