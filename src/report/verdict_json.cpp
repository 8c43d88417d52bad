#include "report/verdict_json.h"

#include "report/blocker_json.h"
#include "report/light_json.h"
#include "report/rule_json.h"
#include "words/keys.h"
#include "words/look_words.h"

namespace glim {

namespace {

/// A figure of a row that looks in directions, else null.
Json if_looked(const LampVerdict& verdict, Json figure)
{
    return has_areas(verdict) ? std::move(figure) : Json();
}

Json worst_json(const LampVerdict& verdict, const LampLook& look)
{
    if (!has_areas(verdict))
        return {};
    const std::size_t at = worst_at(verdict);
    return Json::Object{{"h_deg", in_degrees(look.toward[at].h)},
                        {"v_deg", in_degrees(look.toward[at].v)},
                        {"words", bearing_words(look.toward[at], speech_of(look))},
                        {"lens_mm2", in_mm2(look.seen[at].lens)},
                        {"low_mm2", in_mm2(look.low(at))},
                        {"high_mm2", in_mm2(look.high(at))},
                        {"expected_error_mm2", in_mm2(uncertainty(look, at))},
                        {"hidden_low_mm2", in_mm2(look.hidden_low(at))},
                        {"hidden_high_mm2", in_mm2(look.hidden_high(at))},
                        {"mesh_error_mm2", in_mm2(look.mesh_error[at])},
                        {"certified", look.seen[at].certified},
                        {"exact", is_exact(look, at)}};
}

/// Solid angles are null where the field is a line or a point.
Json coverage_json(const Coverage& c)
{
    const bool has_width = c.solid_angle > SolidAngle();
    return Json::Object{
        {"directions_met", c.directions_met},
        {"directions", c.directions},
        {"solid_angle_met_sr", has_width ? Json(in_steradians(c.solid_angle_met)) : Json()},
        {"solid_angle_sr", has_width ? Json(in_steradians(c.solid_angle)) : Json()}};
}

Json directions_json(const std::vector<DirectionVerdict>& directions)
{
    Json::Array at, weight, outcome;
    for (const DirectionVerdict& d : directions) {
        at.push_back(d.at);
        weight.push_back(in_steradians(d.weight));
        outcome.push_back(key_of(d.outcome));
    }
    return Json::Object{
        {"at", std::move(at)}, {"weight_sr", std::move(weight)}, {"outcome", std::move(outcome)}};
}

Json uncovered_json(const UncoveredRange& u, const LampLook& look)
{
    const FieldRectangle range{u.h_least, u.h_most, u.v_least, u.v_most};
    return Json::Object{{"h_least_deg", in_degrees(u.h_least)},
                        {"h_most_deg", in_degrees(u.h_most)},
                        {"v_least_deg", in_degrees(u.v_least)},
                        {"v_most_deg", in_degrees(u.v_most)},
                        {"words", range_words(range, speech_of(look))},
                        {"directions", u.directions},
                        {"solid_angle_sr", in_steradians(u.solid_angle)},
                        {"least_visible_mm2", in_mm2(u.least_visible)}};
}

Json bearing_json(const Bearing& b)
{
    return Json::Object{{"h_deg", in_degrees(b.h)}, {"v_deg", in_degrees(b.v)}};
}

Json crossings_json(const std::vector<Crossing>& crossings)
{
    Json::Array all;
    for (const Crossing& c : crossings)
        all.push_back(Json::Object{{"met", bearing_json(c.met)},
                                   {"unmet", bearing_json(c.unmet)},
                                   {"visible_met_mm2", in_mm2(c.visible_met)},
                                   {"visible_unmet_mm2", in_mm2(c.visible_unmet)},
                                   {"uncertainty_deg", in_degrees(c.uncertainty)}});
    return all;
}

Json number_or_null(const std::optional<double>& number) { return number ? Json(*number) : Json(); }

Json measured_json(const std::vector<Measurement>& measured)
{
    Json::Array all;
    for (const Measurement& m : measured) {
        Json::Array points;
        for (const Point& p : m.points)
            points.push_back(Json::Array{p.x(), p.y(), p.z()});
        all.push_back(Json::Object{{"what", m.what},
                                   {"unit", key_of(m.unit)},
                                   {"figure", m.figure},
                                   {"at_least", number_or_null(m.at_least)},
                                   {"at_most", number_or_null(m.at_most)},
                                   {"points_mm", std::move(points)},
                                   {"accuracy", m.accuracy},
                                   {"note", m.note}});
    }
    return all;
}

/// Null where no gap gives the category, or the row asks for none.
Json category_json(const std::optional<CategoryByGap>& category)
{
    if (!category)
        return {};
    const Json gap = category->gap ? Json(category->gap->figure) : Json();
    return Json::Object{
        {"counts", category->counts()},
        {"declared", category->declared},
        {"by_gap", Json::Array(category->possible.begin(), category->possible.end())},
        {"gap_mm", gap},
        {"contradicts", category->contradicts}};
}

/// How sure a verdict is of what lies between the directions; null where there are none.
Json between_json(const LampVerdict& verdict)
{
    if (!has_areas(verdict))
        return {};
    return Json::Object{{"kind", key_of(verdict.between)},
                        {"finest_step_deg", in_degrees(verdict.finest_step)}};
}

Json relaxation_json(const LampVerdict& verdict, const RuleRow& row)
{
    if (!verdict.relaxation)
        return {};
    Json::Object json{{"place", *verdict.relaxation}};
    for (Json::Member& member : citation_json(row.relaxations[*verdict.relaxation].citation))
        json.push_back(std::move(member));
    return json;
}

Json lamp_json(const Findings& findings, const RuleRow& row, const LampVerdict& verdict)
{
    const LampLook& look = findings.looks[verdict.look];
    Json::Array uncovered, blockers;
    for (const UncoveredRange& u : verdict.uncovered)
        uncovered.push_back(uncovered_json(u, look));
    for (const Blocker& b : verdict.blockers)
        blockers.push_back(blocker_json(b));
    return Json::Object{
        {"lamp", label_of(look)},
        {"look", verdict.look},
        {"outcome", key_of(verdict.outcome)},
        {"because", key_of(verdict.because)},
        {"field", field_json(verdict.field)},
        {"relaxation", relaxation_json(verdict, row)},
        {"needed_mm2", if_looked(verdict, in_mm2(verdict.needed))},
        {"tolerated_mm2", if_looked(verdict, in_mm2(verdict.tolerated))},
        {"hidden_mm2", if_looked(verdict, in_mm2(verdict.hidden))},
        {"least_visible_mm2", if_looked(verdict, in_mm2(verdict.least_visible))},
        {"margin_mm2", if_looked(verdict, in_mm2(verdict.margin))},
        {"worst", worst_json(verdict, look)},
        {"coverage", if_looked(verdict, coverage_json(verdict.coverage))},
        {"between", between_json(verdict)},
        {"crossings", crossings_json(verdict.crossings)},
        {"measured", measured_json(verdict.measured)},
        {"follows", verdict.follows},
        {"category", category_json(verdict.category)},
        {"light", verdict_light_json(verdict)},
        {"estimate", estimate_json(verdict)},
        {"uncovered", std::move(uncovered)},
        {"blockers", std::move(blockers)},
        {"directions", directions_json(verdict.directions)},
    };
}

Json row_findings_json(const Findings& findings, const RowFindings& row)
{
    Json::Object json = row_json(row.row);
    Json::Array lamps;
    for (const LampVerdict& verdict : row.lamps)
        lamps.push_back(lamp_json(findings, row.row, verdict));
    json.emplace_back("not_chosen", row.not_chosen);
    json.emplace_back("proof_from", row.proof_from);
    json.emplace_back("lamps", std::move(lamps));
    json.emplace_back("together",
                      row.together ? lamp_json(findings, row.row, *row.together) : Json());
    return json;
}

Json deciding_json(const Findings& findings, const CheckFindings& check)
{
    if (!check.deciding)
        return {};
    const LampVerdict& verdict = check.deciding_verdict();
    const bool together = check.deciding->together;
    return Json::Object{{"row", check.deciding_row().row.id},
                        {"row_place", check.deciding->row},
                        {"lamp", label_of(findings.looks[verdict.look])},
                        {"lamp_place", together ? Json() : Json(check.deciding->lamp)},
                        {"together", together}};
}

void add_decided_figures(Json::Object& json, const Findings& findings, const CheckFindings& check)
{
    const LampVerdict* verdict = check.deciding ? &check.deciding_verdict() : nullptr;
    const bool known = verdict && has_areas(*verdict);
    const auto or_null = [&](const auto& figure) { return known ? Json(figure()) : Json(); };
    json.emplace_back("needed_mm2", or_null([&] { return in_mm2(verdict->needed); }));
    json.emplace_back("least_visible_mm2", or_null([&] { return in_mm2(verdict->least_visible); }));
    json.emplace_back("margin_mm2", or_null([&] { return in_mm2(verdict->margin); }));
    json.emplace_back("worst",
                      or_null([&] { return worst_json(*verdict, findings.looks[verdict->look]); }));
    json.emplace_back("provenance", verdict
                                        ? Json(key_of(check.deciding_row().row.citation.provenance))
                                        : Json());
}

} // namespace

Json check_json(const Findings& findings, const CheckFindings& check)
{
    Json::Object json{{"name", check.name},
                      {"outcome", key_of(check.outcome)},
                      {"because", key_of(check.because)},
                      {"explanation", check.explanation},
                      {"options", Json::Array(check.options.begin(), check.options.end())},
                      {"table", check.table},
                      {"regulation", check.regulation},
                      {"edition", check.edition},
                      {"rule", check.rule},
                      {"rule_title", check.rule_title}};
    add_decided_figures(json, findings, check);
    json.emplace_back("deciding", deciding_json(findings, check));
    Json::Array rows;
    for (const RowFindings& row : check.rows)
        rows.push_back(row_findings_json(findings, row));
    json.emplace_back("rows", std::move(rows));
    return json;
}

} // namespace glim
