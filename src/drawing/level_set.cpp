#include "drawing/level_set.h"

#include "drawing/chained_lines.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <map>

namespace glim {

namespace {

/// A point of a level set: a node, or somewhere on the edge from it to the next along H or V.
enum class Kind { node, on_h_edge, on_v_edge };
constexpr std::uint64_t kinds = 3;

struct Corner {
    int v, h;
};

/// Marching squares, with what is below always on the left.
class Marcher {
public:
    Marcher(const FieldGrid& grid, std::span<const double> figures, double level,
            std::span<const Bearing> known)
        : grid_(grid), figures_(figures), level_(level)
    {
        for (const Bearing& b : known)
            note(b);
        for (int v = 0; v < grid.v_lines(); ++v)
            for (int h = 0; h < grid.h_lines(); ++h)
                if (grid.has_cell(v, h))
                    march({v, h});
    }

    LevelSet lines() const
    {
        std::vector<LineStep> around = border_;
        around.insert(around.end(), rim_.begin(), rim_.end());
        return {bearings_of(chained(border_)), bearings_of(chained(around))};
    }

private:
    std::uint64_t key(Kind kind, Corner c) const
    {
        const auto v = static_cast<std::uint64_t>(c.v), h = static_cast<std::uint64_t>(c.h);
        const std::uint64_t place = v * static_cast<std::uint64_t>(grid_.h_lines()) + h;
        return place * kinds + static_cast<std::uint64_t>(kind);
    }

    void note(const Bearing& b)
    {
        const auto place = [](const std::vector<Angle>& lines, Angle a) {
            return static_cast<int>(std::upper_bound(lines.begin(), lines.end(), a) -
                                    lines.begin()) -
                   1;
        };
        const Corner before{place(grid_.vs(), b.v), place(grid_.hs(), b.h)};
        if (before.v < 0 || before.h < 0)
            return;
        // A node is on four edges at once, and tells nothing of any.
        const Bearing first = grid_.bearing(before.v, before.h);
        if (first.v == b.v && first.h != b.h && before.h + 1 < grid_.h_lines())
            known_[key(Kind::on_h_edge, before)] = b;
        if (first.h == b.h && first.v != b.v && before.v + 1 < grid_.v_lines())
            known_[key(Kind::on_v_edge, before)] = b;
    }

    double above(Corner c) const { return figures_[*grid_.node(c.v, c.h)] - level_; }
    bool is_below(Corner c) const { return above(c) < 0; }

    /// The key of the edge between two neighbouring corners, whichever comes first.
    std::uint64_t edge(Corner a, Corner b) const
    {
        const Corner first{std::min(a.v, b.v), std::min(a.h, b.h)};
        return key(a.v == b.v ? Kind::on_h_edge : Kind::on_v_edge, first);
    }

    void march(Corner cell)
    {
        const auto [v, h] = cell;
        const std::array<Corner, 4> corners{{{v, h}, {v, h + 1}, {v + 1, h + 1}, {v + 1, h}}};
        const std::array<bool, 4> open{!grid_.has_cell(v - 1, h), !grid_.has_cell(v, h + 1),
                                       !grid_.has_cell(v + 1, h), !grid_.has_cell(v, h - 1)};
        std::vector<std::size_t> rising, falling; // sides, going round
        for (std::size_t i = 0; i < 4; ++i) {
            const Corner a = corners[i], b = corners[(i + 1) % 4];
            if (is_below(a) != is_below(b))
                (is_below(a) ? rising : falling).push_back(i);
            if (open[i])
                add_rim(a, b);
        }
        const auto side = [&](std::size_t i) { return edge(corners[i], corners[(i + 1) % 4]); };
        if (rising.size() == 1)
            border_.push_back({side(rising[0]), side(falling[0])});
        if (rising.size() < 2)
            return;
        // Joined below: each border cuts off the corner above that follows. Else each corner below
        // is cut off, back to where it was reached.
        double sum = 0;
        for (const Corner c : corners)
            sum += above(c);
        const std::size_t step = sum < 0 ? 1 : 3;
        for (const std::size_t i : rising)
            border_.push_back({side(i), side((i + step) % 4)});
    }

    void add_rim(Corner a, Corner b)
    {
        const auto node = [&](Corner c) { return key(Kind::node, c); };
        if (is_below(a) && is_below(b))
            rim_.push_back({node(a), node(b)});
        else if (is_below(a))
            rim_.push_back({node(a), edge(a, b)});
        else if (is_below(b))
            rim_.push_back({edge(a, b), node(b)});
    }

    Bearing bearing_of(std::uint64_t key) const
    {
        const auto kind = static_cast<Kind>(key % kinds);
        const auto place = static_cast<int>(key / kinds);
        const Corner a{place / grid_.h_lines(), place % grid_.h_lines()};
        const Bearing first = grid_.bearing(a.v, a.h);
        if (kind == Kind::node)
            return first;
        if (const auto found = known_.find(key); found != known_.end())
            return found->second;
        const Corner b{a.v + (kind == Kind::on_v_edge), a.h + (kind == Kind::on_h_edge)};
        const Bearing last = grid_.bearing(b.v, b.h);
        const double share = above(a) / (above(a) - above(b));
        return {first.h + (last.h - first.h) * share, first.v + (last.v - first.v) * share};
    }

    std::vector<BearingLine> bearings_of(const std::vector<ChainedLine>& chains) const
    {
        std::vector<BearingLine> lines;
        for (const ChainedLine& chain : chains) {
            BearingLine line{{}, chain.closed};
            for (const std::uint64_t key : chain.points)
                line.points.push_back(bearing_of(key));
            line = straightened(line);
            if (has_length(line))
                lines.push_back(std::move(line));
        }
        return lines;
    }

    const FieldGrid& grid_;
    std::span<const double> figures_;
    double level_;
    std::map<std::uint64_t, Bearing> known_;
    std::vector<LineStep> border_, rim_;
};

/// Where a node is exactly at the level, the borders on all edges from it are one point.
BearingLine without_repeats(BearingLine line)
{
    std::vector<Bearing>& points = line.points;
    points.erase(std::unique(points.begin(), points.end()), points.end());
    while (line.closed && points.size() > 1 && points.front() == points.back())
        points.pop_back();
    return line;
}

} // namespace

LevelSet level_set(const FieldGrid& grid, std::span<const double> figures, double level,
                   std::span<const Bearing> known)
{
    return Marcher(grid, figures, level, known).lines();
}

std::vector<BearingLine> outline_of(const FieldGrid& grid)
{
    const std::vector<double> zeros(
        static_cast<std::size_t>(grid.h_lines()) * static_cast<std::size_t>(grid.v_lines()), 0);
    return level_set(grid, zeros, 1).below;
}

BearingLine straightened(const BearingLine& repeating)
{
    const BearingLine line = without_repeats(repeating);
    BearingLine thin{{}, line.closed};
    const std::size_t n = line.points.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Bearing& here = line.points[i];
        const Bearing& before = line.points[(i + n - 1) % n];
        const Bearing& after = line.points[(i + 1) % n];
        const bool straight =
            (before.h == here.h && here.h == after.h) || (before.v == here.v && here.v == after.v);
        const bool end = !line.closed && (i == 0 || i + 1 == n);
        if (end || !straight)
            thin.points.push_back(here);
    }
    return thin.points.empty() ? line : thin;
}

} // namespace glim
