#include "remedy/top_line.h"

#include <algorithm>

namespace glim {

namespace {

/// An edge that ends at a node ends there whatever its last bits say; mm.
constexpr double node_grain = 1e-6;
/// A lit face seen edge on still has a width; mm.
constexpr double least_width = 1e-3;

enum class Depth : std::uint8_t { behind, beside, front };

SeenPlace between(const SeenPlace& a, const SeenPlace& b, double u)
{
    const double way = b.u - a.u;
    const double s = way == 0 ? 0.5 : std::clamp((u - a.u) / way, 0.0, 1.0);
    return {u, a.y + s * (b.y - a.y), a.w + s * (b.w - a.w)};
}

} // namespace

/// A patch's points as the axes have them, and where they are before it or behind.
struct TopLine::Places {
    std::vector<SeenPlace> at;
    std::vector<Depth> depth;

    Places(const StandingPatch& patch, const PushAxes& axes, const LitWindow& window)
    {
        at.reserve(patch.points.size());
        depth.reserve(patch.points.size());
        for (const Point& p : patch.points) {
            at.push_back(seen_place(axes, p));
            const double w = at.back().w;
            depth.push_back(w > window.w_most    ? Depth::front
                            : w < window.w_least ? Depth::behind
                                                 : Depth::beside);
        }
    }
};

TopLine::TopLine(std::span<const StandingPatch* const> patches, const PushAxes& axes,
                 const LitWindow& window)
    : u_least_(window.u_least),
      step_(std::max(window.u_most - window.u_least, least_width) / (nodes - 1)),
      front_(nodes, nothing), beside_(nodes)
{
    for (const StandingPatch* patch : patches) {
        const Places places(*patch, axes, window);
        add_outline(*patch, places, axes.toward);
        add_beside(*patch, places);
    }
    for (std::vector<Slice>& slices : beside_)
        std::sort(slices.begin(), slices.end(),
                  [](const Slice& a, const Slice& b) { return a.y_high > b.y_high; });
}

TopLine::NodeRange TopLine::nodes_between(double u_least, double u_most) const
{
    const double last = nodes - 1;
    const double from = std::ceil((u_least - node_grain - u_least_) / step_);
    const double to = std::floor((u_most + node_grain - u_least_) / step_);
    return {static_cast<std::ptrdiff_t>(std::clamp(from, 0.0, last + 1)),
            static_cast<std::ptrdiff_t>(std::clamp(to, -1.0, last))};
}

void TopLine::raise(const SeenPlace& a, const SeenPlace& b)
{
    const NodeRange range = nodes_between(std::min(a.u, b.u), std::max(a.u, b.u));
    for (std::ptrdiff_t i = range.first; i <= range.last; ++i) {
        const double u = u_least_ + step_ * static_cast<double>(i);
        const double y = a.u == b.u ? std::max(a.y, b.y) : between(a, b, u).y;
        front_[i] = std::max(front_[i], y);
    }
}

// What a patch covers in view is bounded by its outline, and so is how high it reaches: only edges
// with the patch on one side need a look.
void TopLine::add_outline(const StandingPatch& patch, const Places& places, const Vector& toward)
{
    std::vector<std::uint8_t> faces(patch.facets.size());
    for (std::size_t f = 0; f < faces.size(); ++f)
        faces[f] = static_cast<std::uint8_t>(patch.normals[f].dot(toward) > 0);
    for (const PatchEdge& edge : patch.edges) {
        if (edge.second != PatchEdge::no_facet &&
            (faces[edge.first] == faces[edge.second]) != edge.runs_alike)
            continue;
        if (places.depth[edge.from] == Depth::front && places.depth[edge.to] == Depth::front)
            raise(places.at[edge.from], places.at[edge.to]);
    }
}

void TopLine::add_beside(const StandingPatch& patch, const Places& places)
{
    for (const Facet& f : patch.facets) {
        const auto [least, most] =
            std::minmax({places.depth[f[0]], places.depth[f[1]], places.depth[f[2]]});
        if (least != Depth::front && most != Depth::behind)
            add_slices({places.at[f[0]], places.at[f[1]], places.at[f[2]]});
    }
}

void TopLine::add_slices(const std::array<SeenPlace, 3>& corners)
{
    std::array<SeenPlace, 3> c = corners;
    std::sort(c.begin(), c.end(), [](const SeenPlace& a, const SeenPlace& b) { return a.u < b.u; });
    const NodeRange range = nodes_between(c[0].u, c[2].u);
    for (std::ptrdiff_t i = range.first; i <= range.last; ++i) {
        const double u = u_least_ + step_ * static_cast<double>(i);
        SeenPlace a = between(c[0], c[2], u);
        SeenPlace b = u < c[1].u ? between(c[0], c[1], u) : between(c[1], c[2], u);
        if (a.y < b.y)
            std::swap(a, b);
        beside_[i].push_back({a.y, a.w, b.y, b.w});
    }
}

double TopLine::high_beyond(const Slice& slice, double w)
{
    if (slice.w_high > w)
        return slice.y_high;
    if (slice.w_low <= w)
        return nothing;
    const double s = (w - slice.w_low) / (slice.w_high - slice.w_low);
    return slice.y_low + s * (slice.y_high - slice.y_low);
}

std::size_t TopLine::node_at(double u) const
{
    const double place = std::round((u - u_least_) / step_);
    return static_cast<std::size_t>(std::clamp(place, 0.0, static_cast<double>(nodes - 1)));
}

template <class At>
double TopLine::between_nodes(double u, const At& at) const
{
    const double place = std::clamp((u - u_least_) / step_, 0.0, static_cast<double>(nodes - 1));
    const std::size_t i = std::min(static_cast<std::size_t>(place), nodes - 2);
    const double s = place - static_cast<double>(i);
    const double a = at(i);
    const double b = at(i + 1);
    if (a == nothing || b == nothing)
        return s < 0.5 ? a : b;
    return a + s * (b - a);
}

double TopLine::front(double u) const
{
    return between_nodes(u, [this](std::size_t node) { return front_[node]; });
}

double TopLine::top_of_node(std::size_t node, double w) const
{
    double highest = front_[node];
    for (const Slice& slice : beside_[node]) {
        if (slice.y_high <= highest)
            break;
        highest = std::max(highest, high_beyond(slice, w));
    }
    return highest;
}

// What is wholly before the lit face at one node may be beside it at the next, so the two are put
// together before anything is drawn between nodes.
double TopLine::top(double u, double w) const
{
    return between_nodes(u, [&](std::size_t node) { return top_of_node(node, w); });
}

bool TopLine::is_beside(std::size_t node, double w) const
{
    return std::any_of(beside_[node].begin(), beside_[node].end(),
                       [&](const Slice& slice) { return std::max(slice.w_high, slice.w_low) > w; });
}

} // namespace glim
