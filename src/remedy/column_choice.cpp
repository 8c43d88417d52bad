#include "remedy/column_choice.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace glim {

namespace {

/// Rounds over all demands, at most; each costs as much as the first.
constexpr int most_rounds = 8;
/// A round that saves a smaller share of the volume is the last.
constexpr double worthwhile_share = 1e-3;
constexpr int halvings = 40;

double seen_in(const ChoiceColumn& column, double level)
{
    const auto last = static_cast<double>(column.seen.size() - 1);
    const double at = std::clamp(level, 0.0, last);
    const auto i = std::min(static_cast<std::size_t>(at), column.seen.size() - 2);
    return column.seen[i] + (at - static_cast<double>(i)) * (column.seen[i + 1] - column.seen[i]);
}

double depth_asked(const ChoicePoint& p, const std::vector<double>& depths)
{
    double deepest = 0;
    for (std::uint32_t c = p.first; c <= p.last; ++c)
        deepest = std::max(deepest, depths[c]);
    return deepest <= 0 ? 0.0 : std::clamp(p.base + deepest, 0.0, double{p.most});
}

/// All columns at one level, as far as each may go.
std::vector<double> level_depths(const ChoiceDemand& demand, double step, double level)
{
    std::vector<double> depths;
    depths.reserve(demand.columns.size());
    for (const ChoiceColumn& column : demand.columns)
        depths.push_back(step * std::min(level, static_cast<double>(column.highest)));
    return depths;
}

double least_level(const ChoiceDemand& demand, double step)
{
    double most = 0;
    for (const ChoiceColumn& column : demand.columns)
        most = std::max(most, static_cast<double>(column.highest));
    double least = 0;
    if (seen_under(demand, step, level_depths(demand, step, 0)) >= demand.needed)
        return 0;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (least + most) / 2;
        const double seen = seen_under(demand, step, level_depths(demand, step, middle));
        (seen >= demand.needed ? most : least) = middle;
    }
    return most;
}

/// A step up in one column, from one level to another: what it frees and what it costs.
struct Step {
    std::uint32_t column;
    std::uint32_t from, to;
    double freed, cost;

    double price() const { return cost / freed; }
};

class Improver {
public:
    explicit Improver(const ChoiceProblem& problem);
    void take_turns();
    const ChosenDepths& chosen() const { return chosen_; }

private:
    struct Ask {
        std::uint32_t demand, place; ///< place in the demand's points
    };
    static constexpr std::uint32_t nobody = ~std::uint32_t{0};

    void take_back(std::uint32_t demand);
    void put(std::uint32_t demand);
    void choose(std::uint32_t demand);
    std::vector<std::vector<double>> costs(const ChoiceDemand& demand) const;
    static void add_steps(const ChoiceColumn& column, std::uint32_t place,
                          const std::vector<double>& cost, std::vector<Step>& steps);
    void take(const ChoiceDemand& demand, const std::vector<Step>& steps,
              std::vector<double>& depths) const;
    double volume() const;

    const ChoiceProblem& problem_;
    std::vector<std::vector<Ask>> asks_; ///< by point
    ChosenDepths chosen_;
    std::vector<double> field_;        ///< by point: the deepest that is asked
    std::vector<std::uint32_t> owner_; ///< by point: which demand asks for it
};

Improver::Improver(const ChoiceProblem& problem)
    : problem_(problem), asks_(problem.area.size()), field_(problem.area.size(), 0),
      owner_(problem.area.size(), nobody)
{
    for (std::uint32_t d = 0; d < problem.demands.size(); ++d) {
        chosen_.emplace_back(problem.demands[d].columns.size(), 0);
        for (std::uint32_t p = 0; p < problem.demands[d].points.size(); ++p)
            asks_[problem.demands[d].points[p].point].push_back({d, p});
    }
}

/// Leaves the field as the other demands ask for it.
void Improver::take_back(std::uint32_t demand)
{
    std::fill(chosen_[demand].begin(), chosen_[demand].end(), 0);
    for (const ChoicePoint& p : problem_.demands[demand].points) {
        if (owner_[p.point] != demand)
            continue;
        field_[p.point] = 0;
        owner_[p.point] = nobody;
        for (const Ask& ask : asks_[p.point]) {
            const ChoicePoint& other = problem_.demands[ask.demand].points[ask.place];
            const double depth = depth_asked(other, chosen_[ask.demand]);
            if (depth > field_[p.point]) {
                field_[p.point] = depth;
                owner_[p.point] = ask.demand;
            }
        }
    }
}

void Improver::put(std::uint32_t demand)
{
    for (const ChoicePoint& p : problem_.demands[demand].points) {
        const double depth = depth_asked(p, chosen_[demand]);
        if (depth > field_[p.point]) {
            field_[p.point] = depth;
            owner_[p.point] = demand;
        }
    }
}

/// By column and level: what it adds to the volume that the others ask for.
std::vector<std::vector<double>> Improver::costs(const ChoiceDemand& demand) const
{
    std::vector<std::vector<double>> costs;
    costs.reserve(demand.columns.size());
    for (const ChoiceColumn& column : demand.columns)
        costs.emplace_back(column.seen.size(), 0);
    for (const ChoicePoint& p : demand.points) {
        if (p.column == ChoicePoint::none || p.most <= field_[p.point])
            continue;
        std::vector<double>& cost = costs[p.column];
        for (std::size_t k = 1; k < cost.size(); ++k) {
            const double depth =
                std::min(p.base + problem_.step * static_cast<double>(k), double{p.most});
            cost[k] += problem_.area[p.point] * std::max(0.0, depth - field_[p.point]);
        }
    }
    return costs;
}

/// The lower hull of cost over what is seen: each step up it is dearer than the one before.
void Improver::add_steps(const ChoiceColumn& column, std::uint32_t place,
                         const std::vector<double>& cost, std::vector<Step>& steps)
{
    std::vector<Step> hull;
    std::uint32_t at = 0;
    for (std::uint32_t k = 1; k <= column.highest; ++k) {
        if (column.seen[k] <= column.seen[at])
            continue;
        Step step{place, at, k, column.seen[k] - column.seen[at], cost[k] - cost[at]};
        while (!hull.empty() && hull.back().price() >= step.price()) {
            step.from = hull.back().from;
            step.freed += hull.back().freed;
            step.cost += hull.back().cost;
            hull.pop_back();
        }
        hull.push_back(step);
        at = k;
    }
    steps.insert(steps.end(), hull.begin(), hull.end());
}

/// The cheapest steps, until enough is seen; of the last one only as much as is needed.
void Improver::take(const ChoiceDemand& demand, const std::vector<Step>& steps,
                    std::vector<double>& depths) const
{
    double wanting = demand.needed - seen_under(demand, problem_.step, depths);
    for (const Step& step : steps) {
        if (wanting <= 0)
            return;
        double& depth = depths[step.column];
        if (step.freed <= wanting) {
            depth = problem_.step * step.to;
            wanting -= step.freed;
            continue;
        }
        const ChoiceColumn& column = demand.columns[step.column];
        double least = step.from;
        double most = step.to;
        for (int i = 0; i < halvings; ++i) {
            const double middle = (least + most) / 2;
            const double freed = seen_in(column, middle) - seen_in(column, step.from);
            (freed >= wanting ? most : least) = middle;
        }
        depth = problem_.step * most;
        return;
    }
}

void Improver::choose(std::uint32_t place)
{
    const ChoiceDemand& demand = problem_.demands[place];
    const std::vector<std::vector<double>> cost = costs(demand);
    std::vector<Step> steps;
    for (std::uint32_t c = 0; c < demand.columns.size(); ++c)
        add_steps(demand.columns[c], c, cost[c], steps);
    std::stable_sort(steps.begin(), steps.end(),
                     [](const Step& a, const Step& b) { return a.price() < b.price(); });
    take(demand, steps, chosen_[place]);
}

double Improver::volume() const
{
    return std::inner_product(field_.begin(), field_.end(), problem_.area.begin(), 0.0);
}

void Improver::take_turns()
{
    std::vector<double> levels;
    levels.reserve(problem_.demands.size());
    for (const ChoiceDemand& demand : problem_.demands)
        levels.push_back(least_level(demand, problem_.step));
    std::vector<std::uint32_t> order(problem_.demands.size());
    std::iota(order.begin(), order.end(), 0U);
    std::stable_sort(order.begin(), order.end(),
                     [&](std::uint32_t a, std::uint32_t b) { return levels[a] > levels[b]; });
    double before = std::numeric_limits<double>::infinity();
    for (int round = 0; round < most_rounds; ++round) {
        for (const std::uint32_t demand : order) {
            take_back(demand);
            choose(demand);
            put(demand);
        }
        const double now = volume();
        if (round > 0 && now >= (1 - worthwhile_share) * before)
            return;
        before = now;
    }
}

} // namespace

double seen_under(const ChoiceDemand& demand, double step_mm, const std::vector<double>& depths)
{
    double seen = 0;
    for (std::size_t c = 0; c < demand.columns.size(); ++c)
        seen += seen_in(demand.columns[c], depths[c] / step_mm);
    return seen;
}

std::vector<double> depth_ordered_choice(const ChoiceDemand& demand, double step_mm)
{
    return level_depths(demand, step_mm, least_level(demand, step_mm));
}

ChosenDepths depth_ordered_choice(const ChoiceProblem& problem)
{
    ChosenDepths chosen;
    chosen.reserve(problem.demands.size());
    for (const ChoiceDemand& demand : problem.demands)
        chosen.push_back(depth_ordered_choice(demand, problem.step));
    return chosen;
}

ChosenDepths improved_choice(const ChoiceProblem& problem)
{
    Improver improver(problem);
    improver.take_turns();
    ChosenDepths ordered = depth_ordered_choice(problem);
    return volume_under(problem, improver.chosen()) <= volume_under(problem, ordered)
               ? improver.chosen()
               : ordered;
}

std::vector<double> depths_under(const ChoiceProblem& problem, const ChosenDepths& chosen)
{
    std::vector<double> depths(problem.area.size(), 0);
    for (std::size_t d = 0; d < problem.demands.size(); ++d)
        for (const ChoicePoint& p : problem.demands[d].points)
            depths[p.point] = std::max(depths[p.point], depth_asked(p, chosen[d]));
    return depths;
}

double volume_under(const ChoiceProblem& problem, const ChosenDepths& chosen)
{
    const std::vector<double> depths = depths_under(problem, chosen);
    return std::inner_product(depths.begin(), depths.end(), problem.area.begin(), 0.0);
}

} // namespace glim
