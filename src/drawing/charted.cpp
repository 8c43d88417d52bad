#include "drawing/charted.h"

#include "words/light_words.h"
#include "words/numbers.h"

#include <cmath>

namespace glim {

namespace {

constexpr std::array charted_table = {
    ChartedWord{Charted::area_in_view, "Area in view", "area in view", "in view, mm\u00b2",
                "least in view", "visible area", "asked", true, false},
    ChartedWord{Charted::hidden_area, "Hidden area", "hidden area", "hidden, mm\u00b2",
                "most hidden", "hidden area", "allowed", false, false},
    ChartedWord{Charted::light_left, "Light left", "light left", "left, cd", "worst direction",
                "light that is left", "asked", true, true},
    ChartedWord{Charted::own_light, "Light", "light", "light, cd", "most light", "light", "allowed",
                false, true},
};

} // namespace

Charted charted_by(const RuleRow& row)
{
    if (std::holds_alternative<LeastArea>(row.criterion))
        return Charted::area_in_view;
    if (std::holds_alternative<MostIntensity>(row.criterion))
        return Charted::own_light;
    return asks_light(row.criterion) ? Charted::light_left : Charted::hidden_area;
}

const ChartedWord& words_of(Charted charted)
{
    return charted_table[static_cast<std::size_t>(charted)];
}

std::string charted_words(Charted charted, double figure)
{
    if (std::isnan(figure))
        return "not measured";
    return words_of(charted).is_light ? intensity_words(candelas(figure))
                                      : area_words(square_millimetres(figure));
}

} // namespace glim
