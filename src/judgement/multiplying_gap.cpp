#include "judgement/multiplying_gap.h"

#include "judgement/place_verdict.h"
#include "model/rule.h"

#include <cmath>

namespace glim {

namespace {

std::string_view words_of(Provenance provenance)
{
    for (const ProvenanceWord& word : provenance_words)
        if (word.provenance == provenance)
            return word.words;
    return "";
}

/// "row `gap` (x 1.5 from 75 mm on, x 2 from 60 mm on); from memory: not verified; SOURCE (CLAUSE)"
std::string note_of(const RuleRow& row)
{
    std::string steps;
    for (const GapStep& step : std::get<GapToLamp>(row.criterion).steps)
        steps += (steps.empty() ? "x " : ", x ") + step.follows + " from " +
                 std::to_string(std::lround(in_mm(step.at_least))) + " mm on";
    const Citation& from = row.citation;
    return "row `" + row.id + "` (" + steps + "); " + std::string(words_of(from.provenance)) +
           "; " + from.source + (from.clause.empty() ? "" : " (" + from.clause + ")");
}

} // namespace

std::vector<Measurement> multiplying_gap(const RuleRow& gap_row, const Asked& asked,
                                         const LampLook& look, const Study& study,
                                         const PreparedScene& scene)
{
    Asked measured;
    measured.look = asked.look;
    measured.lamp = asked.lamp;
    std::vector<Measurement> gap = place_verdict(gap_row, measured, look, study, scene).measured;
    for (Measurement& m : gap)
        m.note = note_of(gap_row);
    return gap;
}

} // namespace glim
