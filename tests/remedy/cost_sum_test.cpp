#include "remedy/break_even.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// In the order of cost_entry_words: parts, harness, fitting, tooling, station, hours, changes.
constexpr std::optional<Range> unknown;

std::optional<Range> one(double figure) { return Range::of(figure); }

const Programme programme{"EUR", one(40000), one(5), one(100), one(12000)};

/// 12 a vehicle; 190,000 once: 150,000 of tooling and 400 hours at 100.
const CostFigures relief{one(0), one(0), one(12), one(150000), one(0), one(400), one(0)};
/// 21.5 a vehicle; 62,000 once.
const CostFigures lamp{one(14), one(5.5), one(2), one(50000), one(0), one(0), one(1)};

} // namespace

TEST_CASE("a cost is its money once and its money a vehicle times the vehicles", "[remedy]")
{
    const CostSum sum = cost_sum(lamp, false, programme);
    CHECK(sum.complete());
    CHECK(sum.a_vehicle == Range::of(21.5));
    CHECK(sum.once == Range::of(62000));
    CHECK(sum.vehicles == Range::of(200000));
    CHECK(sum.programme == Range::of(21.5 * 200000 + 62000));
    CHECK(sum.all_in->likely == Approx(21.5 + 0.31));
}

TEST_CASE("ranges are multiplied end by end, and shared money is low over many vehicles",
          "[remedy]")
{
    Programme wide = programme;
    wide.volume = Range{20000, 40000, 50000};
    wide.hour = Range{80, 100, 150};
    CostFigures figures = relief;
    figures[5] = Range{300, 400, 600}; // hours
    const CostSum sum = cost_sum(figures, false, wide);
    CHECK(sum.once == Range{150000 + 24000, 150000 + 40000, 150000 + 90000});
    CHECK(sum.vehicles == Range{100000, 200000, 250000});
    CHECK(sum.all_in->low == Approx(12 + 174000.0 / 250000));
    CHECK(sum.all_in->high == Approx(12 + 240000.0 / 100000));
}

TEST_CASE("what is not known is named, and left out of the sums", "[remedy]")
{
    CostFigures figures = lamp;
    figures[1] = unknown; // harness
    Programme without_rates = programme;
    without_rates.change.reset();
    const CostSum sum = cost_sum(figures, false, without_rates);
    CHECK(sum.missing == std::vector{CostEntry::harness, CostEntry::changes});
    CHECK(sum.a_vehicle == Range::of(16));
    CHECK(sum.once == Range::of(50000));
}

TEST_CASE("no hours cost nothing, whatever an hour costs", "[remedy]")
{
    CHECK(cost_sum(lamp, false, {"EUR", {}, {}, {}, one(12000)}).complete());
    CHECK_FALSE(cost_sum(relief, false, {"EUR", {}, {}, {}, one(12000)}).complete());
}

TEST_CASE("the rest costs nothing only where the user says so", "[remedy]")
{
    const CostFigures only_parts{one(3), {}, {}, {}, {}, {}, {}};
    CHECK(cost_sum(only_parts, true, programme).complete());
    CHECK(cost_sum(only_parts, false, programme).missing.size() == 6);
}

TEST_CASE("without volume or years there is no sum over the programme", "[remedy]")
{
    const CostSum sum = cost_sum(lamp, false, {"EUR", one(40000), {}, one(100), one(12000)});
    CHECK_FALSE(sum.programme);
    CHECK_FALSE(sum.all_in);
}

TEST_CASE("break-even is where what counts once is made up for vehicle by vehicle", "[remedy]")
{
    // By hand: 190,000 + 12 n = 62,000 + 21.5 n, so n = 128,000 / 9.5.
    const BreakEven even =
        break_even(cost_sum(relief, false, programme), cost_sum(lamp, false, programme));
    REQUIRE(even.vehicles);
    CHECK(*even.vehicles == Approx(128000 / 9.5));
    CHECK_FALSE(even.one_below); // few vehicles: the lamp, which counts less once
    CHECK(even.always);
    CHECK(*even.least == Approx(*even.most));
}

TEST_CASE("break-even does not depend on which option is named first", "[remedy]")
{
    const CostSum a = cost_sum(relief, false, programme), b = cost_sum(lamp, false, programme);
    CHECK(break_even(a, b).vehicles == break_even(b, a).vehicles);
    CHECK(break_even(a, b).one_below != break_even(b, a).one_below);
}

TEST_CASE("an option that costs less in both ways has no break-even", "[remedy]")
{
    const CostFigures nothing{};
    const BreakEven even =
        break_even(cost_sum(nothing, true, programme), cost_sum(lamp, false, programme));
    CHECK_FALSE(even.vehicles);
    CHECK(even.one_below);
    CHECK_FALSE(even.alike);
    CHECK(break_even(cost_sum(lamp, false, programme), cost_sum(lamp, false, programme)).alike);
}

TEST_CASE("ranges give the least and the most that a break-even may be", "[remedy]")
{
    CostFigures wide = relief;
    wide[3] = Range{50000, 150000, 250000}; // tooling; 90,000 to 290,000 once
    const BreakEven even =
        break_even(cost_sum(wide, false, programme), cost_sum(lamp, false, programme));
    CHECK(*even.least == Approx(28000 / 9.5));
    CHECK(*even.most == Approx(228000 / 9.5));
    CHECK(even.always);
    wide[3] = Range{10000, 150000, 250000}; // as low as 50,000 once: less than the lamp
    const BreakEven perhaps =
        break_even(cost_sum(wide, false, programme), cost_sum(lamp, false, programme));
    CHECK(perhaps.vehicles);
    CHECK_FALSE(perhaps.always);
}
