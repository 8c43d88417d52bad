#include "judgement/grid_lines.h"

#include <algorithm>

namespace glim {

GridLines::GridLines(const LampVerdict& verdict, const LampLook& look)
{
    for (const DirectionVerdict& d : verdict.directions) {
        if (d.between)
            continue;
        hs_.push_back(look.toward[d.at].h);
        vs_.push_back(look.toward[d.at].v);
    }
    for (std::vector<Angle>* lines : {&hs_, &vs_}) {
        std::sort(lines->begin(), lines->end());
        lines->erase(std::unique(lines->begin(), lines->end()), lines->end());
    }
    for (std::size_t i = 0; i < verdict.directions.size(); ++i)
        if (!verdict.directions[i].between)
            nodes_[node_of(look.toward[verdict.directions[i].at])] = i;
}

GridLines::Node GridLines::node_of(const Bearing& b) const
{
    return {static_cast<int>(std::lower_bound(vs_.begin(), vs_.end(), b.v) - vs_.begin()),
            static_cast<int>(std::lower_bound(hs_.begin(), hs_.end(), b.h) - hs_.begin())};
}

std::optional<std::size_t> GridLines::at(Node node) const
{
    const auto found = nodes_.find(node);
    return found == nodes_.end() ? std::nullopt : std::optional(found->second);
}

bool adjoin(const Bearing& a, const Bearing& b, const Field& field)
{
    return field.holds({(a.h + b.h) / 2, (a.v + b.v) / 2});
}

} // namespace glim
