#pragma once

#include "model/rule.h"

#include <array>
#include <string>
#include <string_view>

namespace glim {

/// What the figures of a chart are, by what its row asks.
enum class Charted {
    area_in_view, ///< mm2
    hidden_area,  ///< mm2; of rows of obstacles
    light_left,   ///< cd; what of the file's intensity is in view
    own_light     ///< cd; the lamp's own, of rows that ask for the most
};
Charted charted_by(const RuleRow& row);

struct ChartedWord {
    Charted charted;
    std::string_view title;  ///< "Area in view"
    std::string_view line;   ///< "area in view"
    std::string_view bar;    ///< "in view, mm2", typeset
    std::string_view worst;  ///< "least in view"; of light the least margin of the worst outcome
    std::string_view in_alt; ///< "visible area"
    std::string_view limit;  ///< "asked"
    bool more_is_better;
    bool is_light;
};
const ChartedWord& words_of(Charted charted);

/// "1250 mm2"; "0.3 cd"; "not measured" for what is no number.
std::string charted_words(Charted charted, double figure);

} // namespace glim
