#include "words/lamp_light_words.h"

#include "judgement/light_figures.h"
#include "model/nearest_word.h"
#include "words/keys.h"
#include "words/light_words.h"
#include "words/look_words.h"
#include "words/numbers.h"

namespace glim {

namespace {

/// So small a share hidden is the rounding of an area that touches.
constexpr double least_share_told = 1e-4;

constexpr std::string_view why_they_differ =
    "rows of area count every part of the lens, however bright it is in that direction; rows of "
    "light count what the optics send there. So a small bright face can pass by light and fail by "
    "area, and a large dim one the other way round";

bool asks_for_most(const RuleRow& row)
{
    return std::holds_alternative<MostIntensity>(row.criterion);
}

std::string multiplier_words(const Multiplier& m)
{
    if (m.least == 1 && m.most == 1)
        return "";
    const std::string least = "x " + rounded(m.least, 2);
    return m.least == m.most ? " (" + least + ")"
                             : " (" + least + " to " + rounded(m.most, 2) + ")";
}

/// "x 2: gap to beam, from edge to edge: 63.1 mm; row `turn-spacing` (...); ..."
std::string gap_words(const Multiplier& m, const Measurement& gap)
{
    std::string words = "x " + rounded(m.least, 2);
    if (m.least != m.most)
        words += " to " + rounded(m.most, 2);
    return words + ": " + gap.what + ": " + rounded(gap.figure, 1) + " mm; " + gap.note;
}

std::string sum_words(const std::optional<Intensity>& whole, const std::optional<Intensity>& left)
{
    if (!whole || !left)
        return "not measured there";
    if (*left >= *whole * (1 - least_share_told))
        return intensity_words(*whole);
    const std::string of_whole = " left of " + intensity_words(*whole);
    // Nothing in view leaves nothing, which is no estimate.
    return intensity_words(*left) + of_whole + (*left > Intensity() ? " (estimate)" : "");
}

/// A row that asks for the most is judged by the lamp's own light, whatever is hidden.
std::string figure_of(const RuleRow& row, const LightFigures& light)
{
    return sum_words(light.whole, asks_for_most(row) ? light.whole : light.left);
}

std::string needed_words(const RuleRow& row, const LampVerdict& verdict, const LampLook& look)
{
    const LightFigures& light = *verdict.light;
    const std::string needed = intensity_words(light.needed);
    return figure_of(row, light) +
           (asks_for_most(row) ? ", at most " + needed : ", " + needed + " needed") +
           multiplier_words(light.multiplier) + ", " +
           bearing_figures(look.toward[worst_at(verdict)]);
}

std::string group_words(const GroupOfLight& group)
{
    std::string words = "group " + group.name + ": " + sum_words(group.whole, group.left) + ", " +
                        intensity_words(group.needed) + " needed, " +
                        std::string(words_of(group.outcome));
    if (group.would_suffice)
        words += *group.would_suffice ? "; would suffice" : "; would not suffice";
    return words;
}

/// "; through a cover that lets 90 % pass"
std::string cover_words(const LookLight& light)
{
    return light.transmittance == 1
               ? ""
               : "; through a cover that lets " + rounded(light.transmittance * 100, 1) + " % pass";
}

} // namespace

std::string light_figure_words(const RuleRow& row, const LampVerdict& verdict)
{
    const LightFigures& light = *verdict.light;
    if (!light.worst_group)
        return figure_of(row, light);
    const GroupOfLight& group = light.groups[*light.worst_group];
    return "group " + group.name + ": " + sum_words(group.whole, group.left);
}

std::string light_margin_words(const LampVerdict& verdict)
{
    const std::optional<Intensity>& margin = verdict.light->margin;
    if (!margin)
        return "-";
    return (*margin > Intensity() ? "+" : "") + intensity_words(*margin);
}

std::string estimate_words(const LightEstimate& estimate)
{
    const std::string by = estimate.row.empty() ? "" : " (`" + estimate.row + "`)";
    if (!estimate.suffices)
        return "cannot be told" + by + ": " + std::string(words_of(estimate.because));
    if (*estimate.suffices)
        return "the visible part would suffice: an estimate; measurement due";
    const std::string why =
        words_of(estimate.because).empty() ? "" : ": " + std::string(words_of(estimate.because));
    return "the visible part would not suffice" + by + why + "; an estimate; measurement due";
}

std::string category_words(const CategoryByGap& category)
{
    const std::string gap =
        category.gap ? category.gap->what + ": " + rounded(category.gap->figure, 1) + " mm" : "";
    const std::string allowed = listed(category.possible, "or");
    if (category.declared.empty()) {
        if (gap.empty())
            return "not known: none is declared, and the gap leads to a lamp that is not in the "
                   "study";
        return category.possible.size() == 1
                   ? category.counts() + ", by the " + gap + "; none is declared"
                   : "not known: none is declared, and the " + gap + " may give " + allowed;
    }
    if (gap.empty())
        return category.declared + ", as declared; no gap is known that would bear it out";
    if (category.contradicts)
        return category.declared + ", as declared, which the " + gap +
               " does not allow: it gives " + allowed;
    return category.declared + ", as declared; the " + gap + " allows it";
}

std::string filed_light_words(const LookLight& light)
{
    return "intensity of " + listed(light.files) + cover_words(light);
}

std::string light_basis_words(const LookLight& light)
{
    return "intensity of " + listed(light.files) + " times the share in view, " +
           std::string(brightness_words[light.brightness].words) + cover_words(light);
}

std::vector<Labelled> light_entries(const RuleRow& row, const LampVerdict& verdict,
                                    const LampLook& look)
{
    std::vector<Labelled> entries;
    if (verdict.light) {
        entries.push_back({"light", needed_words(row, verdict, look)});
        for (const Measurement& gap : verdict.measured)
            entries.push_back({"multiplier", gap_words(verdict.light->multiplier, gap)});
        for (const GroupOfLight& group : verdict.light->groups)
            entries.push_back({"", group_words(group)});
    }
    if (verdict.estimate)
        entries.push_back({"estimate", estimate_words(*verdict.estimate)});
    else if (verdict.outcome == Outcome::proof_due && !look.light)
        entries.push_back({"estimate", "none, no photometric data: give `photometry`"});
    if (look.light && (verdict.light || verdict.estimate)) {
        entries.push_back({"stands on", asks_for_most(row) ? filed_light_words(*look.light)
                                                           : light_basis_words(*look.light)});
        if (std::holds_alternative<LeastIntensity>(row.criterion))
            entries.push_back({"note", std::string(why_they_differ)});
    }
    return entries;
}

} // namespace glim
