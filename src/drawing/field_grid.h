#pragma once

#include "geometry/field.h"

#include <optional>
#include <span>
#include <vector>

namespace glim {

/// The nodes at which a field was looked at, and the cells between four of them that lie in the
/// field: what maps and profiles are drawn from. Lines are counted from 0 along H and along V.
class FieldGrid {
public:
    /// `nodes` as grid_of() gives them for `field`, in any order; none twice.
    FieldGrid(std::span<const Bearing> nodes, const Field& field);

    const std::vector<Angle>& hs() const { return hs_; }
    const std::vector<Angle>& vs() const { return vs_; }
    int h_lines() const { return static_cast<int>(hs_.size()); }
    int v_lines() const { return static_cast<int>(vs_.size()); }

    Bearing bearing(int v, int h) const
    {
        return {hs_[static_cast<std::size_t>(h)], vs_[static_cast<std::size_t>(v)]};
    }
    /// The place in `nodes`; none where the field has no such node.
    std::optional<std::size_t> node(int v, int h) const;
    /// The cell between lines v and v + 1, h and h + 1; no cell beyond the outermost lines.
    bool has_cell(int v, int h) const;
    /// A field of lines and points has none.
    bool has_cells() const { return cells_ > 0; }
    /// Whether there is nothing but field between two nodes that are neighbours along a line.
    bool joined_along_h(int v, int h) const; ///< (v, h) and (v, h + 1)
    bool joined_along_v(int v, int h) const; ///< (v, h) and (v + 1, h)

    /// Bilinear between the nodes of the cell around `b`; none where `b` lies in no cell. `figures`
    /// has one a node.
    std::optional<double> value_at(const Bearing& b, std::span<const double> figures) const;
    /// The nearest of the nodes of the cell around `b`, as a place in `nodes`.
    std::optional<std::size_t> nearest_to(const Bearing& b) const;

private:
    struct Within {
        int v, h;                ///< the cell
        double v_share, h_share; ///< of the way to its second lines
    };
    std::optional<Within> cell_around(const Bearing& b) const;
    std::size_t slot(int v, int h) const
    {
        return static_cast<std::size_t>(v) * hs_.size() + static_cast<std::size_t>(h);
    }
    bool inside(int v, int h) const { return v >= 0 && h >= 0 && v < v_lines() && h < h_lines(); }

    Field field_;
    std::vector<Angle> hs_, vs_;
    std::vector<std::optional<std::size_t>> nodes_; ///< by V, then H
    std::vector<bool> has_cell_;
    std::size_t cells_ = 0;
};

} // namespace glim
