#include "report/tolerances_json.h"

#include "model/rule.h"
#include "report/csv.h"
#include "words/keys.h"
#include "words/numbers.h"
#include "words/tolerance_words.h"

namespace glim {

namespace {

std::string_view key_of(ContributorKind kind)
{
    switch (kind) {
    case ContributorKind::way:
        return "way";
    case ContributorKind::tolerance:
        return "tolerance";
    case ContributorKind::part:
        return "part";
    case ContributorKind::installation:
        return "installation";
    }
    return "";
}

const ToleranceWayWord& word_of(ToleranceWay way)
{
    return tolerance_way_words[static_cast<std::size_t>(way)];
}

Json share_json(const ShareOfBuilds& share)
{
    return Json::Object{{"met", share.met},
                        {"builds", share.builds},
                        {"share", share.share},
                        {"low", share.low},
                        {"high", share.high}};
}

Json estimate_json(const Estimate& estimate)
{
    return Json::Object{{"share", estimate.value}, {"low", estimate.low}, {"high", estimate.high}};
}

Json bearing_json(const Bearing& b)
{
    return Json::Object{{"h_deg", in_degrees(b.h)}, {"v_deg", in_degrees(b.v)}};
}

Json checks_json(const ToleranceFindings& found)
{
    Json::Array all;
    for (const ToleratedCheck& check : found.checks) {
        Json::Array outcomes;
        for (const OutcomeCount& count : check.outcomes)
            outcomes.push_back(
                Json::Object{{"outcome", glim::key_of(count.outcome)}, {"builds", count.builds}});
        all.push_back(
            Json::Object{{"name", check.name},
                         {"as_drawn", glim::key_of(check.as_drawn)},
                         {"meets", share_json(check.share)},
                         {"outcomes", std::move(outcomes)},
                         {"deciding_verdict", check.deciding ? Json(*check.deciding) : Json()},
                         {"rows_taken_as_drawn", check.depends_on_others}});
    }
    return all;
}

Json stack_json(const StackUp& stack, const ToleranceFindings& found, const Study& study)
{
    Json::Array by;
    for (std::size_t f = 0; f < stack.deviations.size(); ++f) {
        const ToleranceWayWord& word = word_of(found.factors[f].way);
        by.push_back(
            Json::Object{{"tolerance", study.variation.tolerances[found.factors[f].tolerance].name},
                         {"way", word.key},
                         {"unit", word.unit},
                         {"off", stack.deviations[f]}});
    }
    return Json::Object{{"figure_mm2", stack.figure},
                        {"toward", bearing_json(stack.toward)},
                        {"outcome", glim::key_of(stack.outcome)},
                        {"every_corner", stack.every_corner},
                        {"looked_at", stack.looked_at},
                        {"deviations", std::move(by)}};
}

Json spread_json(const FigureSpread& spread)
{
    Json::Array counts;
    for (const std::size_t count : spread.histogram.counts)
        counts.emplace_back(count);
    return Json::Object{{"mean_mm2", spread.mean},
                        {"standard_deviation_mm2", spread.standard_deviation},
                        {"least_mm2", spread.least},
                        {"one_percent_mm2", spread.one_percent},
                        {"median_mm2", spread.median},
                        {"ninety_nine_percent_mm2", spread.ninety_nine_percent},
                        {"most_mm2", spread.most},
                        {"histogram", Json::Object{{"least_mm2", spread.histogram.least},
                                                   {"width_mm2", spread.histogram.width},
                                                   {"builds", std::move(counts)}}}};
}

Json contributions_json(const ToleratedVerdict& verdict, const ToleranceFindings& found,
                        const Study& study)
{
    Json::Array all;
    for (std::size_t c = 0; c < verdict.contributions.size(); ++c)
        all.push_back(Json::Object{{"of", contributor_words(found.contributors[c], study)},
                                   {"kind", key_of(found.contributors[c].kind)},
                                   {"by_itself", estimate_json(verdict.contributions[c].first)},
                                   {"with_others", estimate_json(verdict.contributions[c].total)}});
    return all;
}

Json verdict_json(const ToleratedVerdict& v, const ToleranceFindings& found, const Study& study)
{
    Json::Array deciding;
    for (const DecidingDirection& d : v.deciding)
        deciding.push_back(Json::Object{{"toward", bearing_json(d.toward)}, {"builds", d.builds}});
    return Json::Object{{"check", found.checks[v.check].name},
                        {"row", v.row},
                        {"lamp", v.lamp},
                        {"mirrored", v.twin},
                        {"together", v.together},
                        {"figure", v.of_area ? "least_visible_area" : "largest_hidden_area"},
                        {"needed_mm2", v.of_area ? Json(v.needed_mm2) : Json()},
                        {"as_drawn_mm2", v.as_drawn_mm2},
                        {"worst_as_drawn", bearing_json(v.worst_as_drawn)},
                        {"rule_figures", rule_source_words(v, found)},
                        {"meets", share_json(v.share)},
                        {"spread", spread_json(v.spread)},
                        {"deciding_directions", std::move(deciding)},
                        {"worst_stack_up", v.worst ? stack_json(*v.worst, found, study) : Json()},
                        {"contributions", contributions_json(v, found, study)}};
}

Json needed_json(const ToleranceFindings& found, const Study& study)
{
    if (!found.needed)
        return {};
    const NeededTolerance& n = *found.needed;
    return Json::Object{{"tolerance", study.variation.tolerances[n.tolerance].name},
                        {"wanted_share", n.wanted},
                        {"factor", n.factor ? Json(*n.factor) : Json()},
                        {"at_least", n.at_least},
                        {"meets_there", share_json(n.there)},
                        {"answer", needed_tolerance_words(n, study)}};
}

} // namespace

Json tolerances_json(const ToleranceFindings& found, const Study& study, const std::string& command)
{
    Json::Array verdicts, cautions;
    for (const ToleratedVerdict& verdict : found.verdicts)
        verdicts.push_back(verdict_json(verdict, found, study));
    for (const std::string& sentence : tolerance_cautions(found))
        cautions.emplace_back(sentence);
    return Json::Object{{"caution", caution},
                        {"answer", tolerances_sentence(found, study.variation.task.share)},
                        {"command", command},
                        {"partial", found.partial},
                        {"builds", found.builds},
                        {"builds_for_contributions", found.builds_for_contributions},
                        {"directions", found.directions},
                        {"whole_field", found.whole_field},
                        {"meets_all_checks", share_json(found.all_checks)},
                        {"checks", checks_json(found)},
                        {"verdicts", std::move(verdicts)},
                        {"needed_tolerance", needed_json(found, study)},
                        {"stands_on", std::move(cautions)}};
}

std::string contributions_csv(const ToleranceFindings& found, const Study& study)
{
    std::string text =
        csv_row({"check", "row", "lamp", "mirrored", "of", "kind", "by_itself", "by_itself_low",
                 "by_itself_high", "with_others", "with_others_low", "with_others_high"});
    const auto figure = [](double value) { return rounded(value, 4); };
    for (const ToleratedVerdict& v : found.verdicts)
        for (std::size_t c = 0; c < v.contributions.size(); ++c) {
            const auto& [first, total] = v.contributions[c];
            text += csv_row({found.checks[v.check].name, v.row, v.lamp, v.twin ? "true" : "false",
                             contributor_words(found.contributors[c], study),
                             std::string(key_of(found.contributors[c].kind)), figure(first.value),
                             figure(first.low), figure(first.high), figure(total.value),
                             figure(total.low), figure(total.high)});
        }
    return text;
}

std::string build_bins_csv(const ToleranceFindings& found)
{
    std::string text =
        csv_row({"check", "row", "lamp", "mirrored", "figure", "from_mm2", "to_mm2", "builds"});
    for (const ToleratedVerdict& v : found.verdicts) {
        const Histogram& bins = v.spread.histogram;
        for (std::size_t i = 0; i < bins.counts.size(); ++i) {
            const double from = bins.least + bins.width * static_cast<double>(i);
            text += csv_row({found.checks[v.check].name, v.row, v.lamp, v.twin ? "true" : "false",
                             v.of_area ? "least_visible_area" : "largest_hidden_area",
                             csv_number(square_millimetres(from)),
                             csv_number(square_millimetres(from + bins.width)),
                             std::to_string(bins.counts[i])});
        }
    }
    return text;
}

} // namespace glim
