#include "report/answer_words.h"

#include "judgement/rank.h"
#include "words/capitalised.h"
#include "words/lamp_light_words.h"
#include "words/light_words.h"
#include "words/look_words.h"
#include "words/numbers.h"
#include "words/verdict_words.h"

#include <algorithm>
#include <numeric>

namespace glim {

namespace {

/// ", 1.2 cd to spare"; nothing where the light is not known.
std::string spare_light_words(const LightFigures& light)
{
    if (!light.margin)
        return "";
    const bool enough = *light.margin >= Intensity();
    return ", " + intensity_words(enough ? *light.margin : -*light.margin) +
           (enough ? " to spare" : " short of what is asked");
}

std::string found_words(const RowFindings& row, const LampVerdict& verdict)
{
    if (std::holds_alternative<LeastArea>(row.row.criterion))
        return area_words(verdict.least_visible) + " in view where " + area_words(verdict.needed) +
               " are needed, " + spare_words(verdict.margin);
    const std::string found =
        verdict.light ? light_figure_words(row.row, verdict) + spare_light_words(*verdict.light)
                      : area_words(verdict.hidden) + " hidden";
    return found + (verdict.estimate ? "; " + estimate_words(*verdict.estimate) : "");
}

/// Who and where, after what was found.
std::string figures_sentence(const Findings& findings, const CheckFindings& check)
{
    const LampVerdict& verdict = check.deciding_verdict();
    const LampLook& look = findings.looks[verdict.look];
    if (has_areas(verdict))
        return found_words(check.deciding_row(), verdict) + "; decided by " + label_of(look) +
               ", seen from " + bearing_words(look.toward[worst_at(verdict)], speech_of(look));
    if (!verdict.measured.empty())
        return label_of(look) + ", " + measured_words(verdict).front();
    return label_of(look) + " under row " + check.deciding_row().row.id;
}

std::string reason_sentence(const CheckFindings& check)
{
    const std::string reason(words_of(check.because));
    if (reason.empty() || check.explanation.empty())
        return reason + check.explanation;
    return reason + " (" + check.explanation + ")";
}

} // namespace

Tone tone_of(Outcome outcome)
{
    switch (outcome) {
    case Outcome::met:
        return Tone::met;
    case Outcome::not_met:
        return Tone::not_met;
    case Outcome::not_applicable:
        return Tone::plain;
    case Outcome::undecided:
    case Outcome::no_photometric_data:
    case Outcome::proof_due:
        break;
    }
    return Tone::open;
}

std::string answer_sentence(const Findings& findings, const CheckFindings& check)
{
    std::string sentence = capitalised(std::string(words_of(check.outcome)));
    const std::string reason = reason_sentence(check);
    if (!reason.empty())
        sentence += ": " + reason;
    if (check.deciding && applies(check.deciding_verdict()))
        sentence +=
            (reason.empty() ? ": " : ". Of what was asked: ") + figures_sentence(findings, check);
    return sentence + ".";
}

std::vector<std::size_t> worst_first(const Findings& findings)
{
    std::vector<std::size_t> order(findings.checks.size());
    std::iota(order.begin(), order.end(), std::size_t(0));
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return rank_of(findings.checks[a]) < rank_of(findings.checks[b]);
    });
    return order;
}

std::size_t worst_check(const Findings& findings) { return worst_first(findings).front(); }

} // namespace glim
