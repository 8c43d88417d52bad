#include "remedy/sight_needs.h"

#include "remedy/top_line.h"
#include "visibility/lit_look.h"

#include <algorithm>

namespace glim {

static_assert(PushLine::nodes == TopLine::nodes);

std::uint32_t PushLine::column_of(double place)
{
    const double column = std::floor(place * columns / (nodes - 1));
    return static_cast<std::uint32_t>(std::clamp(column, 0.0, columns - 1.0));
}

std::size_t PushLine::row_of(double w) const
{
    const double row = std::floor((w - w_least) / row_depth);
    return static_cast<std::size_t>(std::clamp(row, 0.0, rows - 1.0));
}

std::optional<std::size_t> PushLine::entry_before(std::size_t node, double w) const
{
    const std::size_t row = row_of(w);
    if (w > from[entry(node, row)])
        return entry(node, row);
    if (row == 0 || top[entry(node, row - 1)] == std::numeric_limits<double>::infinity())
        return std::nullopt;
    return entry(node, row - 1);
}

namespace {

using Index = LitLattice::Index;
/// A lit face across its push still has a depth; mm.
constexpr double least_row_depth = 1e-3;

/// Between its nodes a top line may lie so far above what it stands for; mm.
constexpr double top_grain = 0.1;
constexpr double infinite = std::numeric_limits<double>::infinity();

class Sight {
public:
    Sight(const LampEye& eye, const Direction& toward, double spare_mm)
        : eye_(eye), look_(eye.view, toward), spare_(spare_mm),
          hidden_(look_.hidden_by(eye.view.all)), fixed_(look_.hidden_by(eye.fixed, &hidden_)),
          rim_(look_.rim(eye.fixed, fixed_)), need_(hidden_.size(), -no_depth)
    {
    }

    SightNeeds needs();

private:
    struct Line {
        PushLine line;
        TopLine tops;
        std::vector<SeenPlace> places; ///< of the lattice's corners
        double sum = 0;                ///< of what has to sink
    };

    Line line_of(std::size_t pusher) const;
    void raise_needs(Line& line);
    /// From where on things may stand before a corner.
    double before_skip(const Line& line, Index vertex) const
    {
        return line.places[vertex].w + line.line.axes.before_along(look_.skip(vertex));
    }
    double need_at(const Line& line, Index vertex) const;
    bool is_seen_from_under(const Line& line) const;
    void set_tops_before_all(Line& line, std::size_t node) const;
    void fill_nodes(Line& line) const;
    void fill_nodes(Line& line, const LitLattice::Cell& cell) const;
    void add_pieces(SightNeeds& needs, const Line* main) const;
    void add_cut_pieces(SightNeeds& needs, const LitLattice::Cell& cell,
                        std::uint32_t column) const;

    const LampEye& eye_;
    const LitLook look_;
    const double spare_;
    const LitLook::Hidden hidden_;
    const LitLook::Hidden fixed_;
    const LitLook::Rim rim_;
    std::vector<double> need_; ///< one a corner of the lattice
};

Sight::Line Sight::line_of(std::size_t pusher) const
{
    const PushAxes axes(look_.toward(), eye_.pushers[pusher].push);
    std::vector<SeenPlace> places;
    places.reserve(hidden_.size());
    LitWindow window;
    for (Index v = 0; v < hidden_.size(); ++v) {
        places.push_back(seen_place(axes, look_.lattice().vertices()[v]));
        if (look_.skip(v) >= 0)
            window.add(places.back());
    }
    TopLine tops(eye_.pushers[pusher].patches, axes, window);
    PushLine line{.pusher = pusher,
                  .axes = axes,
                  .u_least = tops.u_least(),
                  .step = tops.step(),
                  .w_least = window.w_least,
                  .row_depth =
                      std::max((window.w_most - window.w_least) / PushLine::rows, least_row_depth),
                  .top = {},
                  .low = {},
                  .from = {}};
    return {std::move(line), std::move(tops), std::move(places)};
}

/// Of a corner that a surface above hides and no fixed part. One that is seen all the same, from
/// under what stands above, needs nothing.
double Sight::need_at(const Line& line, Index vertex) const
{
    const SeenPlace& at = line.places[vertex];
    const double over = line.tops.top(at.u, before_skip(line, vertex)) - at.y;
    const bool hidden = hidden_[vertex] != 0;
    if ((over > 0 && !hidden) || over == TopLine::nothing)
        return -no_depth;
    if (!line.line.axes.lowers())
        return hidden && over > 0 ? no_depth : -no_depth;
    return (over + spare_) / line.line.axes.share;
}

void Sight::raise_needs(Line& line)
{
    for (Index v = 0; v < need_.size(); ++v) {
        if (look_.skip(v) < 0)
            continue;
        const double need = need_at(line, v);
        need_[v] = std::max(need_[v], need);
        if (hidden_[v] != 0 && fixed_[v] == 0 && need > 0 && need < no_depth)
            line.sum += need;
    }
}

bool Sight::is_seen_from_under(const Line& line) const
{
    for (Index v = 0; v < hidden_.size(); ++v) {
        if (look_.skip(v) < 0 || hidden_[v] != 0)
            continue;
        const SeenPlace& at = line.places[v];
        if (line.tops.top(at.u, before_skip(line, v)) > at.y + top_grain)
            return true;
    }
    return false;
}

void Sight::fill_nodes(Line& line, const LitLattice::Cell& cell) const
{
    PushLine& l = line.line;
    double u_least = infinite, u_most = -infinite, y = infinite, w = infinite, top = infinite;
    for (const Index v : cell.corners) {
        const SeenPlace& at = line.places[v];
        u_least = std::min(u_least, at.u);
        u_most = std::max(u_most, at.u);
        w = std::min(w, before_skip(line, v));
        y = std::min(y, at.y);
        top = std::min(top, line.tops.top(at.u, before_skip(line, v)));
    }
    const std::size_t last = line.tops.node_at(u_most + l.step);
    for (std::size_t i = line.tops.node_at(u_least - l.step); i <= last; ++i) {
        const std::size_t entry = PushLine::entry(i, l.row_of(w));
        l.from[entry] = std::min(l.from[entry], w);
        l.low[entry] = std::min(l.low[entry], y - spare_);
        l.top[entry] = std::min(l.top[entry], top);
    }
}

/// Where nothing stands beside the lit face, the top line of what is before it is the exact one.
void Sight::set_tops_before_all(Line& line, std::size_t node) const
{
    PushLine& l = line.line;
    const auto at = [&](PushLine::Table& table) {
        return table.begin() + static_cast<std::ptrdiff_t>(PushLine::entry(node, 0));
    };
    const auto first = std::find_if(at(l.from), at(l.from) + PushLine::rows,
                                    [](double from) { return from < infinite; });
    if (first == at(l.from) + PushLine::rows || line.tops.is_beside(node, *first))
        return;
    const double front = line.tops.front(l.u_least + l.step * static_cast<double>(node));
    std::fill(at(l.top) + (first - at(l.from)), at(l.top) + PushLine::rows, front);
}

// Where everything stands before the lit face its own top line is the exact one; where something
// stands beside it the tops over a node's cells differ, and the least of a row asks for most.
void Sight::fill_nodes(Line& line) const
{
    PushLine& l = line.line;
    l.top.assign(PushLine::nodes * PushLine::rows, infinite);
    l.low.assign(PushLine::nodes * PushLine::rows, infinite);
    l.from.assign(PushLine::nodes * PushLine::rows, infinite);
    for (const LitLattice::Cell& cell : look_.lattice().cells()) {
        const auto fixed = [&](Index v) { return fixed_[v] != 0; };
        if (look_.faces(cell) && !std::all_of(cell.corners.begin(), cell.corners.end(), fixed))
            fill_nodes(line, cell);
    }
    for (std::size_t i = 0; i < PushLine::nodes; ++i) {
        for (std::size_t row = 1; row < PushLine::rows; ++row)
            for (PushLine::Table* table : {&l.low, &l.top}) {
                double& least = (*table)[PushLine::entry(i, row)];
                least = std::min(least, (*table)[PushLine::entry(i, row - 1)]);
            }
        set_tops_before_all(line, i);
    }
}

/// What a fixed part's rim leaves of a cell, as triangles about its first corner.
void Sight::add_cut_pieces(SightNeeds& needs, const LitLattice::Cell& cell,
                           std::uint32_t column) const
{
    struct Corner {
        double a, b; // barycentric: of the cell's corners 1 and 2
        double need;
    };
    constexpr std::array<std::array<double, 2>, 3> at = {{{0, 0}, {1, 0}, {0, 1}}};
    std::vector<Corner> left;
    for (std::size_t i = 0; i < 3; ++i) {
        const Index v = cell.corners[i];
        const std::size_t j = (i + 1) % 3;
        if (fixed_[v] == 0)
            left.push_back({at[i][0], at[i][1], need_[v]});
        if (fixed_[v] == fixed_[cell.corners[j]])
            continue;
        const double along = rim_[cell.edges[i]];
        const double s = look_.lattice().edges()[cell.edges[i]].ends[0] == v ? along : 1 - along;
        left.push_back({at[i][0] + s * (at[j][0] - at[i][0]), at[i][1] + s * (at[j][1] - at[i][1]),
                        need_[v] + s * (need_[cell.corners[j]] - need_[v])});
    }
    double share = 0;
    for (std::size_t i = 2; i < left.size(); ++i) {
        const Corner& o = left[0];
        const Corner& p = left[i - 1];
        const Corner& q = left[i];
        const double part = (p.a - o.a) * (q.b - o.b) - (p.b - o.b) * (q.a - o.a);
        needs.pieces.push_back(
            {{o.need, p.need, q.need}, part * look_.projected_mm2(cell), column});
        share += part;
    }
    needs.hidden_by_fixed_mm2 += (1 - share) * look_.projected_mm2(cell);
}

void Sight::add_pieces(SightNeeds& needs, const Line* main) const
{
    for (const LitLattice::Cell& cell : look_.lattice().cells()) {
        if (!look_.faces(cell))
            continue;
        const auto& [a, b, c] = cell.corners;
        double u = 0;
        if (main != nullptr)
            u = (main->places[a].u + main->places[b].u + main->places[c].u) / 3;
        const std::uint32_t column =
            main != nullptr ? PushLine::column_of(main->line.place_of(u)) : 0;
        const int fixed = fixed_[a] + fixed_[b] + fixed_[c];
        if (fixed == 3)
            needs.hidden_by_fixed_mm2 += look_.projected_mm2(cell);
        else if (fixed == 0)
            needs.pieces.push_back(
                {{need_[a], need_[b], need_[c]}, look_.projected_mm2(cell), column});
        else
            add_cut_pieces(needs, cell, column);
    }
}

SightNeeds Sight::needs()
{
    SightNeeds needs;
    if (look_.bare_mm2() == 0)
        return needs;
    std::vector<Line> lines;
    for (std::size_t p = 0; p < eye_.pushers.size(); ++p) {
        lines.push_back(line_of(p));
        raise_needs(lines.back());
        needs.seen_from_under = needs.seen_from_under || is_seen_from_under(lines.back());
    }
    std::erase_if(lines, [](const Line& line) { return line.sum <= 0; });
    std::stable_sort(lines.begin(), lines.end(),
                     [](const Line& a, const Line& b) { return a.sum > b.sum; });
    add_pieces(needs, lines.empty() ? nullptr : &lines.front());
    for (Line& line : lines) {
        fill_nodes(line);
        needs.lines.push_back(std::move(line.line));
    }
    return needs;
}

} // namespace

SightNeeds sight_needs(const LampEye& eye, const Direction& toward, Length spare)
{
    return Sight(eye, toward, in_mm(spare)).needs();
}

} // namespace glim
