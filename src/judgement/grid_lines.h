#pragma once

#include "judgement/findings.h"

#include <map>

namespace glim {

/// The grid that a verdict's directions stand on: who is whose neighbour. What was found between
/// the nodes is not on it.
class GridLines {
public:
    GridLines(const LampVerdict& verdict, const LampLook& look);

    /// Counted from 0 along V and along H; neighbours differ by one.
    struct Node {
        int v, h;
        friend auto operator<=>(const Node&, const Node&) = default;
    };
    Node node_of(const Bearing& b) const;
    /// The place in the verdict's directions; none where the field has no such node.
    std::optional<std::size_t> at(Node node) const;
    const std::map<Node, std::size_t>& nodes() const { return nodes_; }

private:
    std::vector<Angle> hs_, vs_;
    std::map<Node, std::size_t> nodes_;
};

/// Whether there is nothing but field between two neighbours.
bool adjoin(const Bearing& a, const Bearing& b, const Field& field);

} // namespace glim
