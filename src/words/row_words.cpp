#include "words/row_words.h"

#include "words/criterion_words.h"
#include "words/lamp_light_words.h"
#include "words/look_words.h"
#include "words/numbers.h"
#include "words/verdict_words.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace glim {

std::vector<const LampVerdict*> verdicts_of(const RowFindings& row)
{
    std::vector<const LampVerdict*> all;
    bool told = !row.together;
    for (const LampVerdict& verdict : row.lamps)
        if (!row.together || verdict.look != row.together->look)
            all.push_back(&verdict);
        else if (!std::exchange(told, true))
            all.push_back(&*row.together);
    if (!told)
        all.push_back(&*row.together);
    return all;
}

std::string figure_words(const RowFindings& row, const LampVerdict& verdict)
{
    if (!has_areas(verdict))
        return verdict.measured.empty() ? "-" : tightest_words(verdict);
    if (verdict.light)
        return light_figure_words(row.row, verdict);
    if (std::holds_alternative<LeastArea>(row.row.criterion))
        return area_words(verdict.least_visible);
    return area_words(verdict.hidden) + " hidden";
}

std::string margin_words(const LampVerdict& verdict)
{
    const auto with_sign = [](bool is_positive, const std::string& words) {
        return (is_positive ? "+" : "") + words;
    };
    if (verdict.light)
        return light_margin_words(verdict);
    if (has_areas(verdict))
        return with_sign(verdict.margin > Area(), area_words(verdict.margin));
    if (verdict.measured.empty())
        return "-";
    const Measurement& m = tightest(verdict);
    return std::isfinite(m.margin()) ? with_sign(m.margin() > 0, measure_words(m.margin(), m.unit))
                                     : "-";
}

std::string place_words(const LampVerdict& verdict, const LampLook& look)
{
    if (has_areas(verdict))
        return bearing_figures(look.toward[worst_at(verdict)]);
    return verdict.follows.empty() ? "" : "gives " + verdict.follows;
}

std::string short_words(Outcome outcome)
{
    std::string words(key_of(outcome));
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

std::string needed_words(const RowFindings& row)
{
    const bool together = row.row.answered_by == AnsweredBy::together;
    const auto* least = std::get_if<LeastArea>(&row.row.criterion);
    return (least ? area_words(least->area) + " needed" : criterion_words(row.row.criterion)) +
           (together ? " together" : "") + (row.not_chosen ? "; not chosen" : "") +
           (row.proof_from.empty() ? "" : "; the proof, from " + row.proof_from);
}

} // namespace glim
