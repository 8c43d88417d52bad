#pragma once

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
    bool of_area = true;  ///< else of what is hidden
    double asked_mm2 = 0; ///< of area
    std::vector<BearingLine> outline;
    std::vector<BearingLine> threshold; ///< where the area is what is asked; else where "met" ends
    std::string threshold_label;        ///< "1250 mm2"; empty where it is no single figure
    std::string threshold_words;        ///< for the legend
    std::vector<Region> regions;        ///< of what is not met, by outcome
    Bearing worst;
    double worst_mm2 = 0, worst_margin_mm2 = 0;
    std::string worst_words;    ///< "least in view: 1131.4 mm2, 45 deg outboard, level"
    std::string coverage_words; ///< "met in 88 of 91 directions"

    double most_mm2() const; ///< of all directions
};

/// Requires: the row looked in directions.
std::shared_ptr<const ChartSubject> chart_subject(const CheckFindings& check,
                                                  const RowFindings& row,
                                                  const LampVerdict& verdict, const LampLook& look,
                                                  Length hairline);

} // namespace glim
