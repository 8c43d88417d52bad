#pragma once

#include "remedy/push_axes.h"
#include "remedy/pushed_patch.h"

#include <limits>
#include <span>

namespace glim {

/// Where a lamp's lit face lies, as push axes have it; mm.
struct LitWindow {
    double u_least = std::numeric_limits<double>::infinity();
    double u_most = -u_least;
    double w_least = u_least;
    double w_most = -u_least;

    void add(const SeenPlace& p)
    {
        u_least = std::min(u_least, p.u);
        u_most = std::max(u_most, p.u);
        w_least = std::min(w_least, p.w);
        w_most = std::max(w_most, p.w);
    }
};

/// How high patches reach before a lit face, as seen along one direction: what has to sink below a
/// line of sight is all that stands above it. Held at evenly spaced nodes across the view; what is
/// narrower than the way between two of them may be missed.
class TopLine {
public:
    static constexpr std::size_t nodes = 257;
    /// Where nothing stands.
    static constexpr double nothing = -std::numeric_limits<double>::infinity();

    TopLine(std::span<const StandingPatch* const> patches, const PushAxes& axes,
            const LitWindow& window);

    double u_least() const { return u_least_; }
    double step() const { return step_; }
    std::size_t node_at(double u) const;
    /// Of what lies wholly before the lit face; straight between nodes.
    double front(double u) const;
    /// The same together with what lies beside the lit face, as far as it is before `w`; straight
    /// between nodes.
    double top(double u, double w) const;
    /// Whether anything beside the lit face stands at that node, before `w`.
    bool is_beside(std::size_t node, double w) const;

private:
    /// A facet cut at a node's u.
    struct Slice {
        double y_high, w_high; ///< of the higher end
        double y_low, w_low;
    };
    struct Places;
    void add_outline(const StandingPatch& patch, const Places& at, const Vector& toward);
    void add_beside(const StandingPatch& patch, const Places& at);
    void add_slices(const std::array<SeenPlace, 3>& corners);
    void raise(const SeenPlace& a, const SeenPlace& b);
    /// The nodes between two places across; first > last where there is none.
    struct NodeRange {
        std::ptrdiff_t first, last;
    };
    NodeRange nodes_between(double u_least, double u_most) const;
    template <class At>
    double between_nodes(double u, const At& at) const;
    double top_of_node(std::size_t node, double w) const;
    static double high_beyond(const Slice& slice, double w);

    double u_least_;
    double step_;
    std::vector<double> front_;
    std::vector<std::vector<Slice>> beside_; ///< by node, highest first
};

} // namespace glim
