#include "drawing/node_cells.h"

#include "drawing/chained_lines.h"

#include <algorithm>
#include <array>
#include <map>

namespace glim {

namespace {

/// The grid's lines and those halfway between them: each square between them lies in one cell and
/// belongs to one node.
class Quarters {
public:
    Quarters(const FieldGrid& grid, const std::vector<bool>& chosen) : grid_(grid), chosen_(chosen)
    {
        for (int v = 0; v + 1 < v_lines(); ++v)
            for (int h = 0; h + 1 < h_lines(); ++h)
                if (inside(v, h))
                    add_rim(v, h);
    }

    std::vector<BearingLine> outlines() const
    {
        std::vector<BearingLine> lines;
        for (const ChainedLine& chain : chained(steps_)) {
            BearingLine line{{}, chain.closed};
            for (const std::uint64_t key : chain.points)
                line.points.push_back(bearing_of(key));
            line = straightened(line);
            if (has_length(line))
                lines.push_back(std::move(line));
        }
        return lines;
    }

private:
    int h_lines() const { return 2 * grid_.h_lines() - 1; }
    int v_lines() const { return 2 * grid_.v_lines() - 1; }

    bool inside(int v, int h) const
    {
        return v >= 0 && h >= 0 && grid_.has_cell(v / 2, h / 2) &&
               chosen_[*grid_.node((v + 1) / 2, (h + 1) / 2)];
    }
    std::uint64_t key(int v, int h) const
    {
        return static_cast<std::uint64_t>(v) * static_cast<std::uint64_t>(h_lines()) +
               static_cast<std::uint64_t>(h);
    }

    void add_rim(int v, int h)
    {
        if (!inside(v - 1, h))
            steps_.push_back({key(v, h), key(v, h + 1)});
        if (!inside(v, h + 1))
            steps_.push_back({key(v, h + 1), key(v + 1, h + 1)});
        if (!inside(v + 1, h))
            steps_.push_back({key(v + 1, h + 1), key(v + 1, h)});
        if (!inside(v, h - 1))
            steps_.push_back({key(v + 1, h), key(v, h)});
    }

    static Angle on(const std::vector<Angle>& lines, int half)
    {
        const auto i = static_cast<std::size_t>(half / 2);
        return half % 2 == 0 ? lines[i] : (lines[i] + lines[i + 1]) / 2;
    }
    Bearing bearing_of(std::uint64_t key) const
    {
        const int place = static_cast<int>(key);
        return {on(grid_.hs(), place % h_lines()), on(grid_.vs(), place / h_lines())};
    }

    const FieldGrid& grid_;
    const std::vector<bool>& chosen_;
    std::vector<LineStep> steps_;
};

struct Node {
    int v, h;
    friend auto operator<=>(const Node&, const Node&) = default;
};

std::array<Node, 4> neighbours(Node n)
{
    return {{{n.v - 1, n.h}, {n.v, n.h - 1}, {n.v, n.h + 1}, {n.v + 1, n.h}}};
}

class Patches {
public:
    Patches(const FieldGrid& grid, const std::vector<std::optional<std::size_t>>& kinds)
        : grid_(grid), kinds_(kinds)
    {
    }

    std::vector<NodePatch> all()
    {
        std::vector<NodePatch> patches;
        for (int v = 0; v < grid_.v_lines(); ++v)
            for (int h = 0; h < grid_.h_lines(); ++h)
                if (kind({v, h}) && !depths_.contains({v, h}))
                    patches.push_back(patch_from({v, h}));
        return patches;
    }

private:
    std::optional<std::size_t> kind(Node n) const
    {
        const auto node = grid_.node(n.v, n.h);
        return node ? kinds_[*node] : std::nullopt;
    }

    NodePatch patch_from(Node first)
    {
        std::vector<Node> nodes{first};
        depths_[first] = 0;
        for (std::size_t i = 0; i < nodes.size(); ++i)
            for (const Node next : neighbours(nodes[i]))
                if (kind(next) == kind(first) && depths_.try_emplace(next, 0).second)
                    nodes.push_back(next);
        const int depth = set_depths(nodes);
        std::erase_if(nodes, [&](Node n) { return depths_[n] < depth; });
        return {*kind(first), grid_.bearing(middle_of(nodes).v, middle_of(nodes).h), depth};
    }

    /// How many steps along the grid lead out of the patch; gives the most.
    int set_depths(const std::vector<Node>& nodes)
    {
        std::vector<Node> layer;
        for (const Node n : nodes) {
            const auto around = neighbours(n);
            if (std::any_of(around.begin(), around.end(),
                            [&](Node next) { return kind(next) != kind(n); }))
                layer.push_back(n);
        }
        int depth = 0;
        while (!layer.empty()) {
            ++depth;
            std::vector<Node> deeper;
            for (const Node n : layer)
                depths_[n] = depth;
            for (const Node n : layer)
                for (const Node next : neighbours(n))
                    if (kind(next) == kind(n) && depths_[next] == 0) {
                        depths_[next] = depth + 1;
                        deeper.push_back(next);
                    }
            layer = std::move(deeper);
        }
        return depth;
    }

    /// The one nearest to their mean.
    static Node middle_of(const std::vector<Node>& nodes)
    {
        double v = 0, h = 0;
        for (const Node n : nodes) {
            v += n.v;
            h += n.h;
        }
        const auto count = static_cast<double>(nodes.size());
        const auto off = [&](Node n) {
            const double dv = n.v - v / count, dh = n.h - h / count;
            return dv * dv + dh * dh;
        };
        return *std::min_element(nodes.begin(), nodes.end(),
                                 [&](Node a, Node b) { return off(a) < off(b); });
    }

    const FieldGrid& grid_;
    const std::vector<std::optional<std::size_t>>& kinds_;
    std::map<Node, int> depths_;
};

} // namespace

std::vector<BearingLine> outline_of_nodes(const FieldGrid& grid, const std::vector<bool>& chosen)
{
    return Quarters(grid, chosen).outlines();
}

std::vector<NodePatch> patches_of(const FieldGrid& grid,
                                  const std::vector<std::optional<std::size_t>>& kinds)
{
    return Patches(grid, kinds).all();
}

} // namespace glim
