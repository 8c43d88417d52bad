#include "judgement/findings.h"

#include <algorithm>
#include <limits>

namespace glim {

Area LampLook::low(std::size_t at) const
{
    return exact[at] ? std::max(Area{}, exact[at]->visible - exact[at]->rounding) : seen[at].low;
}

Area LampLook::high(std::size_t at) const
{
    return exact[at] ? std::min(seen[at].lens, exact[at]->visible + exact[at]->rounding)
                     : seen[at].high;
}

Area LampLook::hidden(std::size_t at) const
{
    if (exact_hidden[at])
        return exact_hidden[at]->hidden;
    return std::clamp(seen[at].hidden(), seen[at].hidden_low, seen[at].hidden_high);
}

Area LampLook::hidden_low(std::size_t at) const
{
    return exact_hidden[at] ? std::max(Area{}, hidden(at) - exact_hidden[at]->rounding)
                            : seen[at].hidden_low;
}

Area LampLook::hidden_high(std::size_t at) const
{
    return exact_hidden[at] ? hidden(at) + exact_hidden[at]->rounding : seen[at].hidden_high;
}

Area LampLook::approved(std::size_t at) const
{
    return exact[at] && exact_hidden[at] ? exact[at]->visible + exact_hidden[at]->hidden
                                         : seen[at].approved;
}

std::optional<Intensity> LampLook::light_left(std::size_t at) const
{
    const LightToward& there = light->toward[at];
    if (!there.whole)
        return std::nullopt;
    if (hidden_high(at) == Area() && approved(at) > Area())
        return there.whole;
    // Exact areas know better than samples, but nothing of brightness or of single lamps.
    if (light->brightness != 0 || standings.size() != 1)
        return there.left;
    const Area shown = approved(at);
    return shown > Area() ? *there.whole * std::max(0.0, 1 - hidden(at) / shown) : Intensity();
}

std::string_view key_of(Between between)
{
    switch (between) {
    case Between::not_met_anyway:
        return "not_met_anyway";
    case Between::subdivided:
        return "subdivided";
    case Between::on_grid:
        break;
    }
    return "on_grid";
}

std::string_view key_of(Obstacles obstacles)
{
    switch (obstacles) {
    case Obstacles::without_approved:
        return "without_approved";
    case Obstacles::approved_too:
        return "approved_too";
    case Obstacles::all:
        break;
    }
    return "all";
}

std::string_view key_of(FigureUnit unit)
{
    switch (unit) {
    case FigureUnit::degrees:
        return "deg";
    case FigureUnit::share:
        return "share";
    case FigureUnit::millimetres:
        break;
    }
    return "mm";
}

double Measurement::margin() const
{
    double margin = std::numeric_limits<double>::infinity();
    if (at_least)
        margin = figure - *at_least;
    if (at_most)
        margin = std::min(margin, *at_most - figure);
    return margin;
}

const LampVerdict& CheckFindings::deciding_verdict() const
{
    const RowFindings& row = deciding_row();
    return deciding->together ? *row.together : row.lamps[deciding->lamp];
}

} // namespace glim
