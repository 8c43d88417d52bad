#include "remedy/relief_plan.h"

#include "machine/stop.h"
#include "units/trig.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Levels of depth between none and the deepest that is looked at.
constexpr std::uint32_t levels = 96;
/// How much deeper than free slopes need is looked at where points are held: other parts of the
/// lamp, further from them, may have to be freed.
constexpr double deeper_past_held = 2;
/// Rounds of halving: two of them halve a facet's longest edge, so that facets of 10 m come down to
/// less than the finest edge.
constexpr int most_halvings = 40;
/// A relief that samples say is not needed is made all the same, where proofs say that it is; mm.
constexpr double least_depth_mm = 0.01;
/// A column may go so far beyond its level's depth through rounding, of 1.
constexpr double level_grain = 1e-6;

/// A patch divided finely wherever some column may ask for anything.
struct Region {
    NumberedMesh mesh;
    std::vector<double> caps; ///< by point, mm
    std::size_t first = 0;    ///< of its points among all regions'
};

class Planner {
public:
    Planner(const ReliefGround& ground, const std::vector<ReliefDemand>& demands,
            const Findings& findings, const std::vector<FeasibleDemand>& feasible,
            const Workers& workers)
        : ground_(ground), demands_(demands), findings_(findings),
          feasible_(feasible), silent_{.threads = workers.threads,
                                       .stop = workers.stop,
                                       .progress = {}},
          edge_(edge_for_relief(ground))
    {
    }

    ReliefPlan plan();

private:
    struct Table {
        std::vector<DepthAsked> asked; ///< one an eye; depths uniform
        ChoiceDemand choice;
    };

    void find_depths();
    void make_tables();
    Table table_of(const FeasibleDemand& feasible) const;
    void add_columns(Table& table, const SightNeeds& needs) const;
    void add_seen(const LitPiece& piece, std::vector<float>& seen) const;
    void make_regions();
    Region region_of(std::size_t patch) const;
    void add_points(Table& table) const;
    void add_points(Table& table, std::size_t sight, std::size_t line) const;
    void limit_columns(Table& table) const;
    double limit_levels(ReliefPlan& plan);

    const ReliefGround& ground_;
    const std::vector<ReliefDemand>& demands_;
    const Findings& findings_;
    const std::vector<FeasibleDemand>& feasible_;
    Workers silent_;
    double edge_;
    double deepest_ = 0; ///< that the demands need, slopes free
    double looked_ = 0;  ///< how deep columns are looked at
    std::vector<Table> tables_;
    std::vector<Region> regions_;
    std::vector<double> area_, caps_;
};

void Planner::find_depths()
{
    for (const FeasibleDemand& each : feasible_)
        deepest_ = std::max(deepest_, each.depth_mm);
    deepest_ = std::max(deepest_, least_depth_mm);
    const ReliefWish& wish = ground_.study().relief;
    bool held = false;
    for (std::size_t p = 0; p < ground_.patches().size(); ++p) {
        const PushedPatch& patch = ground_.patches()[p];
        const auto points = held_points(ground_, p, {patch.mesh, patch.of});
        held = held || std::find(points.begin(), points.end(), 1) != points.end();
    }
    held = held || !wish.untouched.empty();
    looked_ = held ? deeper_past_held * deepest_ : deepest_;
    if (wish.max_depth)
        looked_ = std::min(looked_, std::max(deepest_, in_mm(*wish.max_depth)));
}

void Planner::add_columns(Table& table, const SightNeeds& needs) const
{
    const std::size_t first = table.choice.columns.size();
    table.choice.columns.resize(first + PushLine::columns);
    for (std::size_t c = first; c < table.choice.columns.size(); ++c) {
        table.choice.columns[c].seen.assign(levels + 1, 0);
        table.choice.columns[c].highest = levels;
    }
    for (const LitPiece& piece : needs.pieces)
        add_seen(piece, table.choice.columns[first + piece.column].seen);
}

/// What each level sees of a piece; only few levels see it in part.
void Planner::add_seen(const LitPiece& piece, std::vector<float>& seen) const
{
    const auto [least, most] = std::minmax_element(piece.need.begin(), piece.need.end());
    const double step = looked_ / levels;
    if (*least >= looked_)
        return;
    for (auto k = static_cast<std::uint32_t>(std::max(0.0, std::floor(*least / step))); k <= levels;
         ++k) {
        const double depth = step * k;
        const double share = depth >= *most ? 1 : share_freed(piece, depth);
        seen[k] += static_cast<float>(piece.area_mm2 * share);
    }
}

Planner::Table Planner::table_of(const FeasibleDemand& feasible) const
{
    Table table;
    const ReliefDemand& demand = demands_[feasible.demand];
    const LampLook& look = findings_.looks[demand.look];
    std::vector<SightNeeds> needs = needs_of(ground_, demand, look);
    const std::vector<std::size_t> eyes = ground_.eyes_of(look);
    for (std::size_t i = 0; i < needs.size(); ++i) {
        add_columns(table, needs[i]);
        table.asked.push_back(
            {eyes[i], std::move(needs[i].lines), std::vector<double>(PushLine::columns, looked_)});
    }
    table.choice.needed = feasible.needed_mm2;
    return table;
}

void Planner::make_tables()
{
    tables_.resize(feasible_.size());
    const bool whole = for_each_index(feasible_.size(), silent_, [&](std::size_t i, unsigned) {
        tables_[i] = table_of(feasible_[i]);
    });
    if (!whole)
        throw Stopped();
}

Region Planner::region_of(std::size_t patch) const
{
    std::vector<DepthAsked> all;
    for (const Table& table : tables_)
        all.insert(all.end(), table.asked.begin(), table.asked.end());
    const PushedPatch& pushed = ground_.patches()[patch];
    Region region{{pushed.mesh, pushed.of}, {}, 0};
    for (int round = 0; round < most_halvings; ++round) {
        const auto marked = asked_facets({ground_, patch}, region.mesh.mesh, all, edge_, silent_);
        if (std::find(marked.begin(), marked.end(), 1) == marked.end())
            break;
        region.mesh = with_halved_edges(region.mesh, marked, pushed.push);
    }
    region.caps =
        depth_caps(region.mesh.mesh, pushed.push, held_points(ground_, patch, region.mesh),
                   field_rules(ground_.study().relief), looked_);
    return region;
}

void Planner::make_regions()
{
    for (std::size_t p = 0; p < ground_.patches().size(); ++p) {
        Region region = region_of(p);
        region.first = area_.size();
        const std::vector<double> areas = areas_across(region.mesh.mesh, ground_.patches()[p].push);
        area_.insert(area_.end(), areas.begin(), areas.end());
        caps_.insert(caps_.end(), region.caps.begin(), region.caps.end());
        regions_.push_back(std::move(region));
    }
}

void Planner::add_points(Table& table, std::size_t sight, std::size_t which) const
{
    const DepthAsked& asked = table.asked[sight];
    const PushLine& line = asked.lines[which];
    const auto shift = static_cast<std::uint32_t>(sight * PushLine::columns);
    for (const StandingPatch* s : ground_.eyes()[asked.eye].pushers[line.pusher].patches) {
        const Region& region = regions_[s->patch];
        for (std::size_t i = 0; i < region.mesh.mesh.points.size(); ++i) {
            const auto of = asked_of_point(line, s->where(region.mesh.mesh.points[i]), edge_);
            if (!of || of->base_mm + looked_ <= 0)
                continue;
            ChoicePoint point{static_cast<std::uint32_t>(region.first + i),
                              shift + of->first,
                              shift + of->last,
                              shift + of->column,
                              static_cast<float>(of->base_mm),
                              static_cast<float>(of->most_mm)};
            if (which > 0) { // asked by all columns of the main line together
                point.first = shift;
                point.last = shift + PushLine::columns - 1;
                point.column = ChoicePoint::none;
            }
            table.choice.points.push_back(point);
        }
    }
}

/// No column may ask a point to go deeper than what is held beside it lets it.
void Planner::limit_columns(Table& table) const
{
    const double step = looked_ / levels;
    for (const ChoicePoint& p : table.choice.points) {
        const double cap = caps_[p.point];
        if (p.most <= cap)
            continue;
        const double highest = std::floor((cap - p.base) / step + level_grain);
        for (std::uint32_t c = p.first; c <= p.last; ++c) {
            std::uint32_t& kept = table.choice.columns[c].highest;
            kept = std::min(kept, static_cast<std::uint32_t>(std::max(0.0, highest)));
        }
    }
}

void Planner::add_points(Table& table) const
{
    for (std::size_t sight = 0; sight < table.asked.size(); ++sight)
        for (std::size_t line = 0; line < table.asked[sight].lines.size(); ++line)
            add_points(table, sight, line);
    limit_columns(table);
}

/// Finds how deep it has to be with points held, and lets no column go deeper. A demand that no
/// depth meets then is to see as much as it can.
double Planner::limit_levels(ReliefPlan& plan)
{
    const double step = looked_ / levels;
    double deepest = deepest_;
    for (std::size_t i = 0; i < tables_.size(); ++i) {
        ChoiceDemand& demand = tables_[i].choice;
        std::vector<double> all;
        for (const ChoiceColumn& column : demand.columns)
            all.push_back(step * column.highest);
        if (const double most = seen_under(demand, step, all);
            most < demand.needed * (1 - level_grain)) {
            plan.held_back.emplace_back(i, most);
            demand.needed = most;
        }
        const std::vector<double> alone = depth_ordered_choice(demand, step);
        deepest = std::max(deepest, *std::max_element(alone.begin(), alone.end()));
    }
    const auto highest = static_cast<std::uint32_t>(std::ceil(deepest / step - level_grain));
    for (Table& table : tables_)
        for (ChoiceColumn& column : table.choice.columns)
            column.highest = std::min(column.highest, highest);
    return deepest;
}

ReliefPlan Planner::plan()
{
    find_depths();
    make_tables();
    make_regions();
    const bool whole = for_each_index(tables_.size(), silent_,
                                      [&](std::size_t i, unsigned) { add_points(tables_[i]); });
    if (!whole)
        throw Stopped();
    ReliefPlan plan;
    plan.deepest_mm = limit_levels(plan);
    ChoiceProblem problem{looked_ / levels, std::move(area_), {}};
    for (Table& table : tables_)
        problem.demands.push_back(std::move(table.choice));
    const ChosenDepths chosen = improved_choice(problem);
    for (std::size_t i = 0; i < tables_.size(); ++i)
        for (std::size_t sight = 0; sight < tables_[i].asked.size(); ++sight) {
            DepthAsked& asked = tables_[i].asked[sight];
            const auto first =
                chosen[i].begin() + static_cast<std::ptrdiff_t>(sight * PushLine::columns);
            asked.depth_mm.assign(first, first + PushLine::columns);
            for (double& depth : asked.depth_mm)
                depth = std::min(depth, plan.deepest_mm);
            plan.asked.push_back(std::move(asked));
        }
    return plan;
}

} // namespace

double edge_for_relief(const ReliefGround& ground)
{
    double diagonal = 0;
    for (const LampEye& eye : ground.eyes()) {
        Box box;
        for (const Point& p : eye.view.lattice.vertices())
            box.add(p);
        diagonal = std::max(diagonal, box.size().norm());
    }
    return std::clamp(diagonal / 50, in_mm(finest_edge), in_mm(coarsest_edge));
}

FieldRules field_rules(const ReliefWish& wish) { return {tan(wish.steepest), in_mm(wish.blend)}; }

std::vector<double> areas_across(const TriangleMesh& mesh, const Direction& push)
{
    std::vector<double> areas(mesh.points.size(), 0);
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        for (const std::uint32_t p : mesh.facets[f])
            areas[p] += std::abs(push.dot(area_vector(mesh, f))) / 3;
    return areas;
}

ReliefPlan relief_plan(const ReliefGround& ground, const std::vector<ReliefDemand>& demands,
                       const Findings& findings, const std::vector<FeasibleDemand>& feasible,
                       const Workers& workers)
{
    return Planner(ground, demands, findings, feasible, workers).plan();
}

} // namespace glim
