#include "words/tolerance_words.h"

#include "model/rule.h"
#include "words/citation_words.h"
#include "words/keys.h"
#include "words/look_words.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/row_words.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr int indent = 2;
/// So many directions are named; the others are counted together.
constexpr std::size_t most_directions = 3;

std::string percent(double share) { return rounded(100 * share, 1); }

struct WaySenseWords {
    std::string_view positive, negative;
};
constexpr std::array senses = {
    WaySenseWords{"forward", "rearward"},
    WaySenseWords{"outboard", "inboard"},
    WaySenseWords{"up", "down"},
    WaySenseWords{"forward end outboard", "forward end inboard"},
    WaySenseWords{"forward end up", "forward end down"},
    WaySenseWords{"outboard end up", "outboard end down"},
    WaySenseWords{"outward along the normals", "inward along the normals"},
};

std::string factor_words(const BuildFactor& factor, double by)
{
    const auto way = static_cast<std::size_t>(factor.way);
    const std::string figure = rounded(std::abs(by), 3) + " ";
    const std::string unit(tolerance_way_words[way].unit);
    const std::string sense(by >= 0 ? senses[way].positive : senses[way].negative);
    return (turns(factor.way) ? "turned " : "") + figure + unit + " " + sense;
}

std::string outcome_counts(const ToleratedCheck& check)
{
    std::vector<std::string> parts;
    for (const OutcomeCount& count : check.outcomes)
        parts.push_back(std::to_string(count.builds) + " " + std::string(words_of(count.outcome)));
    return name_list(parts);
}

std::string figure_words(const ToleratedVerdict& verdict)
{
    if (verdict.of_area)
        return area_words(square_millimetres(verdict.as_drawn_mm2)) + " in view at least, " +
               area_words(square_millimetres(verdict.needed_mm2)) + " needed";
    return area_words(square_millimetres(verdict.as_drawn_mm2)) + " hidden at most";
}

std::string worst_figure_words(const ToleratedVerdict& verdict, const ToleranceFindings& found)
{
    const StackUp& worst = *verdict.worst;
    const std::string figure = area_words(square_millimetres(worst.figure));
    std::string words = verdict.of_area ? figure + " in view" : figure + " hidden";
    if (verdict.of_area) {
        const double spare = worst.figure - verdict.needed_mm2;
        words += ", " + area_words(square_millimetres(std::abs(spare))) +
                 (spare < 0 ? " too little" : " more than needed");
    }
    return words + ", " +
           bearing_words(worst.toward, speech_of(found.as_drawn.looks[verdict.look])) + ": " +
           std::string(words_of(worst.outcome));
}

std::string searched_words(const StackUp& worst)
{
    return worst.every_corner
               ? "all " + std::to_string(worst.looked_at) + " combinations of limits looked at"
               : "the worst found in " + std::to_string(worst.looked_at) +
                     " combinations of limits, changing one at a time";
}

std::vector<std::vector<std::string>> contribution_rows(const ToleratedVerdict& verdict,
                                                        const ToleranceFindings& found,
                                                        const Study& study)
{
    std::vector<std::vector<std::string>> rows{{"", "by itself", "with others"}};
    for (std::size_t c = 0; c < verdict.contributions.size(); ++c) {
        const Contributor& contributor = found.contributors[c];
        const std::string name = contributor_label(contributor, study);
        rows.push_back({contributor.kind == ContributorKind::way ? "  " + name : name,
                        variance_words(verdict.contributions[c].first),
                        variance_words(verdict.contributions[c].total)});
    }
    return rows;
}

std::vector<Labelled> verdict_block(const ToleratedVerdict& verdict, const ToleranceFindings& found,
                                    const Study& study)
{
    std::vector<Labelled> entries{{"decides", tolerated_verdict_words(verdict, found)},
                                  {"as drawn", figure_words(verdict)},
                                  {"as built", figure_spread_words(verdict)},
                                  {"worst from", deciding_words(verdict, found)}};
    if (verdict.worst) {
        entries.push_back({"stack-up", worst_figure_words(verdict, found)});
        for (const std::string& line : stack_up_words(*verdict.worst, found, study))
            entries.push_back({"", line});
        entries.push_back({"", searched_words(*verdict.worst)});
    }
    entries.push_back({"figures", rule_source_words(verdict, found)});
    if (verdict.contributions.empty())
        return entries;
    std::string label = "variance";
    for (const std::string& line : aligned_rows(contribution_rows(verdict, found, study), {1, 2})) {
        entries.push_back({label, line, true});
        label.clear();
    }
    return entries;
}

std::string proof_words(const DirectionProof& proof)
{
    const std::string whole = "Over the whole field, of " + counted(proof.builds, "build") + " ";
    if (proof.others_decide == 0)
        return whole + "none was worse from another direction.";
    return whole + std::to_string(proof.others_decide) + " were worse from another direction, by " +
           area_words(proof.most_worse) + " at most; " + std::to_string(proof.other_outcome) +
           " had another outcome there.";
}

/// An earlier check that the same figures decide; none where there is none.
const ToleratedCheck* same_before(const ToleratedCheck& check, const ToleranceFindings& found)
{
    const ToleratedVerdict& own = found.verdicts[*check.deciding];
    for (const ToleratedCheck& other : found.checks) {
        if (&other == &check)
            return nullptr;
        if (!other.deciding)
            continue;
        const ToleratedVerdict& verdict = found.verdicts[*other.deciding];
        if (verdict.look == own.look && verdict.of_area == own.of_area &&
            verdict.needed_mm2 == own.needed_mm2 && verdict.spread.mean == own.spread.mean &&
            verdict.spread.least == own.spread.least && verdict.share.met == own.share.met)
            return &other;
    }
    return nullptr;
}

std::vector<Labelled> deciding_block(const ToleratedCheck& check, const ToleranceFindings& found,
                                     const Study& study)
{
    if (!check.deciding)
        return {{"decides", "a row that is taken as drawn: tolerances do not reach it"}};
    const ToleratedVerdict& verdict = found.verdicts[*check.deciding];
    if (const ToleratedCheck* same = same_before(check, found))
        return {{"decides", tolerated_verdict_words(verdict, found)},
                {"", "with the same figures as in `" + same->name + "`"},
                {"figures", rule_source_words(verdict, found)}};
    return verdict_block(verdict, found, study);
}

std::string check_words(const ToleratedCheck& check, const ToleranceFindings& found,
                        const Study& study, const TextStyle& style)
{
    std::string text = "\n" +
                       wrapped(check.name + ": " + std::string(words_of(check.as_drawn)) +
                                   " as drawn; of " + counted(check.share.builds, "build") + " " +
                                   share_of_builds_words(check.share) + " meet it",
                               style.columns) +
                       "\n";
    std::vector<Labelled> entries{{"builds", outcome_counts(check)}};
    for (Labelled& entry : deciding_block(check, found, study))
        entries.push_back(std::move(entry));
    return text + labelled_block(entries, indent, style);
}

} // namespace

std::string share_of_builds_words(const ShareOfBuilds& share)
{
    const std::string met =
        share_words(static_cast<double>(share.met), static_cast<double>(share.builds));
    return share.low == share.high
               ? met
               : met + " (" + percent(share.low) + " to " + percent(share.high) + " %)";
}

namespace {

std::string enough_words(const ShareOfBuilds& share, double wanted)
{
    const std::string least = percent(wanted) + " %";
    if (share.low >= wanted)
        return "That is enough: " + least + " are wanted.";
    if (share.high < wanted)
        return "That is too few: " + least + " are wanted.";
    return "Whether that is enough for the wanted " + least + " is open: more `builds` would tell.";
}

/// Two decimals, never more than the figure.
std::string rounded_down(double figure) { return rounded(std::floor(100 * figure) / 100, 2); }

} // namespace

std::string tolerances_sentence(const ToleranceFindings& found, double wanted)
{
    if (found.factors.empty())
        return "Nothing varies: no tolerance is above 0, and every build is as drawn.";
    return (found.partial ? "Stopped early: of " : "Of ") + counted(found.builds, "build") + " " +
           share_of_builds_words(found.all_checks) +
           " meet every check; in brackets where the share lies with 95 % confidence. " +
           enough_words(found.all_checks, wanted);
}

std::string tolerated_verdict_words(const ToleratedVerdict& verdict, const ToleranceFindings& found)
{
    const LampLook& look = found.as_drawn.looks[verdict.look];
    return verdict.lamp + (verdict.together ? ", together" : "") +
           (verdict.twin ? ", on the far side" : "") + "; row " + verdict.row + " (" +
           std::string(words_of(look.function)) + ")";
}

std::string rule_source_words(const ToleratedVerdict& verdict, const ToleranceFindings& found)
{
    for (const RowFindings& row : found.as_drawn.checks[verdict.check].rows)
        if (row.row.id == verdict.row)
            return citation_words(row.row.citation);
    return "";
}

std::string contributor_words(const Contributor& contributor, const Study& study)
{
    switch (contributor.kind) {
    case ContributorKind::part:
        return "all parts";
    case ContributorKind::installation:
        return "all installation";
    case ContributorKind::tolerance:
        return study.variation.tolerances[contributor.tolerance].name;
    case ContributorKind::way:
        break;
    }
    const auto way = static_cast<std::size_t>(contributor.way);
    return study.variation.tolerances[contributor.tolerance].name + ": " +
           std::string(tolerance_way_words[way].key);
}

std::string contributor_label(const Contributor& contributor, const Study& study)
{
    return contributor.kind == ContributorKind::way
               ? std::string(tolerance_way_words[static_cast<std::size_t>(contributor.way)].key)
               : contributor_words(contributor, study);
}

std::string variance_words(const Estimate& estimate)
{
    const auto share = [](double value) { return rounded(100 * std::clamp(value, 0.0, 1.0), 0); };
    return share(estimate.value) + " % (" + share(estimate.low) + " to " + share(estimate.high) +
           ")";
}

std::vector<std::string> stack_up_words(const StackUp& stack, const ToleranceFindings& found,
                                        const Study& study)
{
    std::vector<std::string> lines;
    for (std::size_t f = 0; f < stack.deviations.size(); ++f) {
        const std::size_t tolerance = found.factors[f].tolerance;
        const std::string words = factor_words(found.factors[f], stack.deviations[f]);
        if (f > 0 && found.factors[f - 1].tolerance == tolerance)
            lines.back() += ", " + words;
        else
            lines.push_back(study.variation.tolerances[tolerance].name + ": " + words);
    }
    return lines;
}

std::string figure_spread_words(const ToleratedVerdict& verdict)
{
    const FigureSpread& spread = verdict.spread;
    const auto area = [](double mm2) { return area_words(square_millimetres(mm2)); };
    const std::string mean =
        "mean " + area(spread.mean) + ", standard deviation " + area(spread.standard_deviation);
    return verdict.of_area
               ? mean + "; one in a hundred has less than " + area(spread.one_percent) +
                     ", the least was " + area(spread.least)
               : mean + "; one in a hundred hides more than " + area(spread.ninety_nine_percent) +
                     ", the most was " + area(spread.most);
}

std::string deciding_words(const ToleratedVerdict& verdict, const ToleranceFindings& found)
{
    const BearingSpeech speech = speech_of(found.as_drawn.looks[verdict.look]);
    const auto all = static_cast<double>(verdict.share.builds);
    std::vector<std::string> parts;
    std::size_t others = 0;
    for (std::size_t i = 0; i < verdict.deciding.size(); ++i)
        if (const DecidingDirection& d = verdict.deciding[i]; i < most_directions)
            parts.push_back(bearing_words(d.toward, speech) + " in " +
                            share_words(static_cast<double>(d.builds), all));
        else
            others += d.builds;
    if (others > 0)
        parts.push_back("elsewhere in " + share_words(static_cast<double>(others), all));
    std::string words;
    for (const std::string& part : parts)
        words += (words.empty() ? "" : "; ") + part;
    return words;
}

std::string needed_tolerance_words(const NeededTolerance& needed, const Study& study)
{
    const Tolerance& tolerance = study.variation.tolerances[needed.tolerance];
    const std::string wanted = percent(needed.wanted) + " %";
    const std::string there =
        share_of_builds_words(needed.there) + " of " + counted(needed.builds, "build");
    if (!needed.factor)
        return "Even without the tolerance `" + tolerance.name +
               "` too few builds meet every "
               "check for the wanted " +
               wanted + ": " + there + ". Others have to be narrowed.";
    std::vector<std::string> figures;
    for (const ToleranceWayWord& way : tolerance_way_words)
        if (tolerance[way.way] > 0)
            figures.push_back(std::string(way.key) + " " +
                              rounded_down(*needed.factor * tolerance[way.way]) + " " +
                              std::string(way.unit));
    return "For " + wanted + " of builds to meet every check, `" + tolerance.name + "` may be " +
           (needed.at_least ? "at least " : "at most ") + name_list(figures) + ", " +
           rounded(*needed.factor, 2) + " times what it is" +
           (needed.at_least ? " (more was not tried)" : "") +
           ", as long as all else stays: there " + there +
           (needed.there.low < needed.wanted ? " do, too few to be sure: an estimate." : " do.");
}

std::vector<std::string> tolerance_cautions(const ToleranceFindings& found)
{
    std::vector<std::string> all;
    if (found.partial)
        all.emplace_back("Stopped before all was done: the figures are those of the builds that "
                         "were looked at by then, and what comes after them is missing.");
    if (!found.whole_field)
        all.push_back("Each lamp was looked at from " + std::to_string(found.directions) +
                      " directions at most, those that stood worst in trial builds.");
    if (const std::optional<DirectionProof>& proof = found.direction_proof)
        all.push_back(proof_words(*proof));
    if (found.profile_step > Length())
        all.push_back("Offsets of profiles go in steps of " +
                      rounded(in_mm(found.profile_step), 3) + " mm.");
    const bool others = std::any_of(found.checks.begin(), found.checks.end(),
                                    [](const ToleratedCheck& c) { return c.depends_on_others; });
    if (others)
        all.emplace_back("Rows of light, heights and distances are taken as drawn.");
    all.emplace_back("Areas are sampled, off by some mm2, and meshes count as exact: `check` tells "
                     "how far they may be off. Shares hold for the distributions that the study "
                     "states, with nothing in common between tolerances but their modules.");
    return all;
}

std::string tolerances_words(const ToleranceFindings& found, const Study& study,
                             const TextStyle& style)
{
    std::string text =
        wrapped(tolerances_sentence(found, study.variation.task.share), style.columns) + "\n";
    for (const ToleratedCheck& check : found.checks)
        text += check_words(check, found, study, style);
    if (found.needed)
        text += "\n" + wrapped(needed_tolerance_words(*found.needed, study), style.columns) + "\n";
    text += "\n";
    for (const std::string& sentence : tolerance_cautions(found))
        text += wrapped(sentence, style.columns) + "\n";
    return text + wrapped(caution, style.columns) + "\n";
}

} // namespace glim
