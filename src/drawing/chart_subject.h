#pragma once

#include "drawing/chart_scale.h"
#include "drawing/direction_figures.h"
#include "drawing/level_set.h"
#include "words/bearing_words.h"

#include <memory>
#include <string>

namespace glim {

/// One lamp under one row as its charts show it: lines worked out, words chosen.
struct ChartSubject {
    struct Region {
        Outcome outcome;
        std::string words; ///< "not met: less than 1250 mm2 in view"
        std::vector<BearingLine> lines;
    };

    std::string lamp; ///< with what was asked: "indicator (across the nose: area everywhere)"
    DirectionFigures figures;
    Field field;
    BearingSpeech speech;
    Charted charted = Charted::area_in_view;
    /// What is asked or allowed everywhere alike; none where it depends on the direction.
    std::optional<double> limit;
    std::vector<BearingLine> outline;
    /// Where the figure is what is asked or allowed; of hidden areas where "met" ends.
    std::vector<BearingLine> threshold;
    std::string threshold_label; ///< "1250 mm2"; empty where it is no single figure
    std::string threshold_words; ///< for the legend
    std::vector<Region> regions; ///< of what is not met, by outcome
    Bearing worst;
    double worst_figure = 0, worst_margin = 0;
    std::string worst_words;    ///< "least in view: 1131.4 mm2, 45 deg outboard, level"
    std::string coverage_words; ///< "met in 88 of 91 directions"

    bool of_area() const { return charted == Charted::area_in_view; }
    const ChartedWord& words() const { return words_of(charted); }
    double most() const; ///< of all directions
    /// Of all directions in which it is known; the most where it is known in none.
    double least() const;
    /// From 0 to the most; of light in decades about what is asked and what there is.
    ChartScale scale() const;
};

/// Requires: the row looked in directions.
std::shared_ptr<const ChartSubject> chart_subject(const CheckFindings& check,
                                                  const RowFindings& row,
                                                  const LampVerdict& verdict, const LampLook& look,
                                                  Length hairline);

} // namespace glim
