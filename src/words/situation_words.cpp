#include "words/situation_words.h"

#include "words/bearing_words.h"
#include "words/citation_words.h"
#include "words/look_words.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/row_words.h"
#include "words/rule_source_words.h"
#include "words/verdict_words.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr int indent = 2;

/// "in `boot full`", "with `bonnet: open`", "as the rule has it"
std::string in_words(const Situation& situation, const Study& study)
{
    const std::string label = situation_label(situation, study);
    if (situation.moved)
        return "with " + quoted(label);
    return situation.state.empty() ? label : "in " + quoted(label);
}

std::string share_hidden_words(const LampVerdict& verdict, const LampLook& look, double share)
{
    const std::size_t at = worst_at(verdict);
    return share_words(in_mm2(look.hidden(at)), in_mm2(look.approved(at))) + " hidden, " +
           shortest(100 * share) + " % may be";
}

/// The situation in which the check stands as the rule has it.
std::size_t ruled(const SituationFindings& found, std::size_t check)
{
    const auto at =
        std::find_if(found.situations.begin(), found.situations.end(), [&](const Situation& s) {
            return s.check == check && s.is_verdict && !s.moved;
        });
    return static_cast<std::size_t>(at - found.situations.begin());
}

/// What a row asks of a lamp now, without the lamp.
std::string demand_change(const RowFindings& row, const LampVerdict& before,
                          const LampVerdict& after, const LampLook& look)
{
    if (!applies(after))
        return "no longer applies to";
    if (!applies(before))
        return "applies to";
    std::string words = "asks " + field_words(after.field, speech_of(look));
    if (after.relaxation)
        words += " (" + row.row.relaxations[*after.relaxation].citation.clause + ")";
    return words + " of";
}

/// The lamps of which a row asks something else than before, by what it asks.
std::vector<std::pair<std::string, std::vector<std::string>>>
changes_of(const RowFindings& before, const RowFindings& after, const std::vector<LampLook>& looks)
{
    std::vector<std::pair<std::string, std::vector<std::string>>> changes;
    for (std::size_t l = 0; l < after.lamps.size(); ++l) {
        const LampVerdict& now = after.lamps[l];
        const LampVerdict& then = before.lamps[l];
        if (now.relaxation == then.relaxation && applies(now) == applies(then))
            continue;
        const LampLook& look = looks[now.look];
        const std::string words = demand_change(after, then, now, look);
        if (changes.empty() || changes.back().first != words)
            changes.push_back({words, {}});
        changes.back().second.push_back(quoted(label_of(look)));
    }
    return changes;
}

void add_changes(const SituationFindings& found, std::size_t place, const Study& study,
                 std::vector<std::string>& sentences)
{
    const Situation& situation = found.situations[place];
    const CheckFindings& after = found.at(place);
    const CheckFindings& before = found.at(ruled(found, situation.check));
    for (std::size_t r = 0; r < after.rows.size(); ++r)
        for (const auto& [words, lamps] :
             changes_of(before.rows[r], after.rows[r], found.found.looks)) {
            const std::string sentence = "In " + quoted(situation_label(situation, study)) +
                                         " row `" + after.rows[r].row.id + "` " + words + " " +
                                         name_list(lamps) + ".";
            if (std::find(sentences.begin(), sentences.end(), sentence) == sentences.end())
                sentences.push_back(sentence);
        }
}

std::string verdicts_sentence(const SituationFindings& found)
{
    std::size_t all = 0, met = 0;
    std::vector<std::string> others;
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        if (!found.situations[i].is_verdict || found.situations[i].moved)
            continue;
        ++all;
        if (found.at(i).outcome == Outcome::met)
            ++met;
        else
            others.push_back(quoted(found.at(i).name) + " is " + short_words(found.at(i).outcome));
    }
    if (others.empty())
        return "As the rules have it, " +
               (all == 1 ? "the check is met." : "all " + std::to_string(all) + " checks are met.");
    return "As the rules have it, " + name_list(others) +
           (met == 0   ? "."
            : met == 1 ? "; the other check is met."
                       : "; the other " + std::to_string(met) + " checks are met.");
}

/// Of the rows that hold in positions of moved parts.
std::string moved_parts_sentence(const SituationFindings& found, const Study& study)
{
    if (study.moved_parts.empty())
        return "";
    std::vector<std::string> failing;
    bool any = false;
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        if (!found.situations[i].judges_moved_part())
            continue;
        any = true;
        if (found.at(i).outcome != Outcome::met)
            failing.push_back(in_words(found.situations[i], study) + " row `" + found.at(i).rule +
                              "` is " + short_words(found.at(i).outcome));
    }
    if (!any)
        return " The tables have no row of moved parts that speaks of these lamps: with parts "
               "moved all is information.";
    return failing.empty() ? " What the rules ask of moved parts is met in every position."
                           : " Of moved parts: " + name_list(failing) + ".";
}

/// What the checks say otherwise in one situation: "`a` and `b` are not met"; empty where they say
/// the same.
std::string different_words(const SituationFindings& found, const std::string& where,
                            const Study& study)
{
    std::vector<std::pair<Outcome, std::vector<std::string>>> by_outcome;
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        const Situation& s = found.situations[i];
        const Outcome outcome = found.at(i).outcome;
        if (s.is_verdict || in_words(s, study) != where ||
            outcome == found.at(ruled(found, s.check)).outcome)
            continue;
        const auto same = std::find_if(by_outcome.begin(), by_outcome.end(),
                                       [&](const auto& group) { return group.first == outcome; });
        if (same == by_outcome.end())
            by_outcome.push_back({outcome, {quoted(found.at(i).name)}});
        else
            same->second.push_back(quoted(found.at(i).name));
    }
    std::vector<std::string> parts;
    parts.reserve(by_outcome.size());
    for (const auto& [outcome, names] : by_outcome)
        parts.push_back(name_list(names) + (names.size() == 1 ? " is " : " are ") +
                        short_words(outcome));
    return name_list(parts);
}

/// Where information says otherwise than the verdict; situations that say the same together.
std::string differences_sentence(const SituationFindings& found, const Study& study)
{
    std::vector<std::pair<std::string, std::vector<std::string>>> said; // what, where
    std::vector<std::string> all;
    for (const Situation& s : found.situations) {
        const std::string where = in_words(s, study);
        if (s.is_verdict || std::find(all.begin(), all.end(), where) != all.end())
            continue;
        all.push_back(where);
        const std::string words = different_words(found, where, study);
        const auto same = std::find_if(said.begin(), said.end(),
                                       [&](const auto& one) { return one.first == words; });
        if (words.empty())
            continue;
        if (same == said.end())
            said.push_back({words, {where}});
        else
            same->second.push_back(where);
    }
    if (all.empty())
        return "";
    if (said.empty())
        return " By way of information: no other state or position changes an outcome.";
    std::string text = " By way of information:";
    for (std::size_t i = 0; i < said.size(); ++i)
        text += (i == 0 ? " " : "; ") + name_list(said[i].second) + " " + said[i].first;
    return text + ".";
}

std::string check_table(const SituationFindings& found, const Study& study, std::size_t check)
{
    std::vector<std::vector<std::string>> rows = {
        {"situation", "counts as", "centre at", "outcome", "decided by"}};
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        const Situation& s = found.situations[i];
        if (s.check != check || s.judges_moved_part())
            continue;
        rows.push_back({situation_label(s, study), std::string(standing_words(s)),
                        height_words(found.at(i), found.found.looks),
                        short_words(found.at(i).outcome),
                        deciding_figure_words(found.at(i), found.found.looks)});
    }
    std::string text;
    for (const std::string& line : aligned_rows(rows))
        text += std::string(indent, ' ') + line + "\n";
    return text;
}

std::string moved_table(const SituationFindings& found, const Study& study)
{
    std::vector<std::vector<std::string>> rows = {
        {"moved part", "row", "lamp", "outcome", "on the reference axis"}};
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        if (!found.situations[i].judges_moved_part())
            continue;
        const RowFindings& row = found.at(i).rows.front();
        for (const LampVerdict& verdict : row.lamps) {
            const LampLook& look = found.found.looks[verdict.look];
            rows.push_back({situation_label(found.situations[i], study), row.row.id, label_of(look),
                            short_words(verdict.outcome),
                            verdict_figure_words(row, verdict, look)});
        }
    }
    if (rows.size() == 1)
        return "";
    std::string text = "Moved parts, verdicts\n";
    for (const std::string& line : aligned_rows(rows))
        text += std::string(indent, ' ') + line + "\n";
    return text + "\n";
}

std::string grounds_text(const Study& study, const TextStyle& style)
{
    std::vector<Labelled> entries;
    for (const GroundState& ground : study.grounds)
        entries.push_back({ground.state, ground_words(ground)});
    return "States\n" + labelled_block(entries, indent, style) + "\n";
}

} // namespace

std::string situation_label(const Situation& situation, const Study& study)
{
    if (situation.moved) {
        const MovedPart& part = study.moved_parts[situation.moved->part];
        return part.name + ": " + part.positions[situation.moved->position].name;
    }
    return situation.state.empty() ? "as the rule has it" : situation.state;
}

std::string_view standing_words(const Situation& situation)
{
    return situation.is_verdict ? "verdict" : "information";
}

std::string ground_words(const GroundState& ground)
{
    if (!ground.own)
        return "a state that rules know";
    if (ground.own->from.empty())
        return "a ground of its own";
    std::string words = ground.own->from;
    const double rise = in_mm(ground.own->rise), pitch = in_degrees(ground.own->pitch);
    if (rise != 0)
        words += ", " + rounded(std::abs(rise), 1) + " mm " + (rise > 0 ? "higher" : "lower");
    if (pitch != 0)
        words += ", nose " + rounded(std::abs(pitch), 2) + " deg " + (pitch > 0 ? "up" : "down");
    return words;
}

std::string height_words(const CheckFindings& check, const std::vector<LampLook>& looks)
{
    std::vector<double> heights;
    for (const RowFindings& row : check.rows)
        for (const LampVerdict& verdict : row.lamps)
            if (applies(verdict))
                heights.push_back(in_mm(looks[verdict.look].axis_height));
    if (heights.empty())
        return "";
    const auto [least, most] = std::minmax_element(heights.begin(), heights.end());
    const std::string low = rounded(*least, 0), high = rounded(*most, 0);
    return (low == high ? low : low + " to " + high) + " mm";
}

std::string verdict_figure_words(const RowFindings& row, const LampVerdict& verdict,
                                 const LampLook& look)
{
    if (const auto* most = std::get_if<MostHidden>(&row.row.criterion); most && has_areas(verdict))
        return share_hidden_words(verdict, look, most->share);
    if (has_areas(verdict))
        return figure_words(row, verdict) + " from " + place_words(verdict, look);
    return verdict.measured.empty()
               ? row.row.id
               : figure_words(row, verdict) + " (" + tightest(verdict).what + ")";
}

std::string deciding_figure_words(const CheckFindings& check, const std::vector<LampLook>& looks)
{
    if (!check.deciding)
        return "";
    const LampVerdict& verdict = check.deciding_verdict();
    return verdict_figure_words(check.deciding_row(), verdict, looks[verdict.look]);
}

std::vector<std::string> changed_demands(const SituationFindings& found, const Study& study)
{
    std::vector<std::string> changes;
    for (std::size_t i = 0; i < found.situations.size(); ++i)
        if (!found.situations[i].is_verdict && !found.situations[i].moved)
            add_changes(found, i, study, changes);
    return changes;
}

std::string situations_sentence(const SituationFindings& found, const Study& study)
{
    return verdicts_sentence(found) + moved_parts_sentence(found, study) +
           differences_sentence(found, study);
}

std::string situations_words(const SituationFindings& found, const Study& study,
                             const TextStyle& style)
{
    std::string text = wrapped(situations_sentence(found, study), style.columns) + "\n\n";
    for (std::size_t c = 0; c < study.checks.size(); ++c)
        text += harmless(study.checks[c].name) + "\n" + check_table(found, study, c) + "\n";
    text += moved_table(found, study);
    const std::vector<std::string> changes = changed_demands(found, study);
    for (const std::string& change : changes)
        text += wrapped(change, style.columns) + "\n";
    text += (changes.empty() ? "" : "\n") + grounds_text(study, style);
    return text + rule_sources_words(rows_in(found.found), style) + "\n" +
           wrapped(caution, style.columns) + "\n";
}

} // namespace glim
