#include "remedy/column_choice.h"

#include "shapes/random_numbers.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <functional>

using namespace glim;

namespace {

/// Columns over points of a ridge, one point a column; what a column frees grows straight with its
/// depth. `order` says which point each of the demand's columns stands over.
ChoiceDemand demand_over(const std::vector<std::uint32_t>& order,
                         const std::vector<double>& freed_at_most, double needed, int levels)
{
    ChoiceDemand demand;
    demand.needed = needed;
    for (std::uint32_t c = 0; c < order.size(); ++c) {
        ChoiceColumn column;
        for (int k = 0; k <= levels; ++k)
            column.seen.push_back(static_cast<float>(freed_at_most[c] * k / levels));
        column.highest = static_cast<std::uint32_t>(levels);
        demand.columns.push_back(column);
        demand.points.push_back({order[c], c, c, c, 0, 1e6F});
    }
    return demand;
}

/// The least volume of all choices of whole levels.
double exhaustive(const ChoiceProblem& problem)
{
    ChosenDepths depths;
    for (const ChoiceDemand& demand : problem.demands)
        depths.emplace_back(demand.columns.size(), 0);
    double least = 1e30;
    const std::function<void(std::size_t, std::size_t)> go = [&](std::size_t d, std::size_t c) {
        if (d == problem.demands.size()) {
            least = std::min(least, volume_under(problem, depths));
            return;
        }
        const ChoiceDemand& demand = problem.demands[d];
        if (c == demand.columns.size()) {
            if (seen_under(demand, problem.step, depths[d]) >= demand.needed * (1 - 1e-6))
                go(d + 1, 0);
            return;
        }
        for (std::uint32_t k = 0; k <= demand.columns[c].highest; ++k) {
            depths[d][c] = problem.step * k;
            go(d, c + 1);
        }
    };
    go(0, 0);
    return least;
}

} // namespace

TEST_CASE("a demand alone takes the columns that cost least for what they free", "[remedy]")
{
    ChoiceProblem problem{1, {10, 1, 5}, {}};
    problem.demands.push_back(demand_over({0, 1, 2}, {40, 40, 40}, 60, 4));
    const ChosenDepths chosen = improved_choice(problem);
    // All of the second column, and half of the third: 4 * 1 + 2 * 5.
    CHECK(chosen[0][0] == 0);
    CHECK(chosen[0][1] == 4);
    CHECK(chosen[0][2] == Approx(2));
    CHECK(volume_under(problem, chosen) == Approx(14));
    // Depth-ordered: all three to half depth, 2 * (10 + 1 + 5).
    CHECK(volume_under(problem, depth_ordered_choice(problem)) == Approx(32));
}

// Each alone would free its own cheapest point; the point that serves both is dearer than either,
// and cheaper than the two together.
TEST_CASE("two directions that compete share what serves both", "[remedy]")
{
    ChoiceProblem problem{1, {3, 3, 4}, {}};
    problem.demands.push_back(demand_over({0, 2}, {40, 40}, 40, 4));
    problem.demands.push_back(demand_over({1, 2}, {40, 40}, 40, 4));
    CHECK(exhaustive(problem) == Approx(16));
    // Taking turns does not leave what each has found for itself: 4 * (3 + 3). The lower bound is
    // one demand alone, 12.
    const double found = volume_under(problem, improved_choice(problem));
    CHECK(found <= 24.001);
    CHECK(found >= 16);
}

TEST_CASE("no column goes deeper than its highest level", "[remedy]")
{
    ChoiceProblem problem{1, {10, 1}, {}};
    problem.demands.push_back(demand_over({0, 1}, {40, 40}, 60, 4));
    problem.demands[0].columns[1].highest = 2;
    const ChosenDepths chosen = improved_choice(problem);
    CHECK(chosen[0][1] == 2);
    CHECK(chosen[0][0] == Approx(4));
}

TEST_CASE("the improved choice sees what is needed and is never larger than the depth-ordered one",
          "[remedy]")
{
    shapes::RandomNumbers random(7);
    double worst = 1;
    double sum = 0;
    constexpr int problems = 60;
    for (int i = 0; i < problems; ++i) {
        ChoiceProblem problem{1, {}, {}};
        for (int p = 0; p < 4; ++p)
            problem.area.push_back(random.real(1, 10));
        for (int d = 0; d < 2; ++d) {
            std::vector<std::uint32_t> order = {0, 1, 2, 3};
            std::rotate(order.begin(), order.begin() + d, order.end());
            order.resize(3);
            const std::vector<double> freed = {random.real(10, 40), random.real(10, 40),
                                               random.real(10, 40)};
            problem.demands.push_back(demand_over(order, freed, random.real(15, 30), 4));
        }
        const ChosenDepths chosen = improved_choice(problem);
        for (std::size_t d = 0; d < 2; ++d)
            CHECK(seen_under(problem.demands[d], problem.step, chosen[d]) >=
                  problem.demands[d].needed * (1 - 1e-5));
        const double found = volume_under(problem, chosen);
        CHECK(found <= volume_under(problem, depth_ordered_choice(problem)) * (1 + 1e-9));
        // Whole levels only, so it may come out above a choice of parts of levels.
        const double best = exhaustive(problem);
        worst = std::max(worst, found / best);
        sum += found / best;
    }
    INFO("worst " << worst << ", mean " << sum / problems);
    CHECK(worst <= 1.5);
    CHECK(sum / problems <= 1.05);
}
