#include "report/rule_json.h"

#include "report/criterion_json.h"
#include "words/keys.h"

namespace glim {

namespace {

Json length_json(const std::optional<Length>& length)
{
    return length ? Json(in_mm(*length)) : Json();
}

Json words_json(const std::vector<std::string>& words)
{
    return Json::Array(words.begin(), words.end());
}

Json conditions_json(const std::vector<Condition>& conditions)
{
    Json::Array all;
    for (const Condition& c : conditions)
        all.push_back(Json::Object{{"quantity", key_of(c.quantity)},
                                   {"at_least_mm", length_json(c.at_least)},
                                   {"below_mm", length_json(c.below)},
                                   {"one_of", words_json(c.one_of)},
                                   {"none_of", words_json(c.none_of)}});
    return all;
}

Json relaxations_json(const std::vector<Relaxation>& relaxations)
{
    Json::Array all;
    for (const Relaxation& r : relaxations) {
        Json::Object one = citation_json(r.citation);
        one.emplace_back("when", conditions_json(r.when));
        one.emplace_back("field", field_json(r.field));
        all.push_back(std::move(one));
    }
    return all;
}

Json rule_json(const Rule& rule)
{
    return Json::Object{{"id", rule.id},
                        {"title", rule.title},
                        {"combine", key_of(rule.combine)},
                        {"parts", words_json(rule.parts)},
                        {"when", conditions_json(rule.when)},
                        {"of_other_lamps", functions_json(rule.of_other_lamps)}};
}

} // namespace

Json functions_json(const std::vector<LampFunction>& functions)
{
    Json::Array all;
    for (const LampFunction f : functions)
        all.push_back(key_of(f));
    return all;
}

Json field_json(const Field& field)
{
    Json::Array all;
    for (const FieldRectangle& r : field.rectangles)
        all.push_back(Json::Object{{"h_least_deg", in_degrees(r.h_least)},
                                   {"h_most_deg", in_degrees(r.h_most)},
                                   {"v_least_deg", in_degrees(r.v_least)},
                                   {"v_most_deg", in_degrees(r.v_most)}});
    return all;
}

Json::Object citation_json(const Citation& citation)
{
    return {{"provenance", key_of(citation.provenance)},
            {"source", citation.source},
            {"clause", citation.clause}};
}

Json::Object row_json(const RuleRow& row)
{
    Json::Object json{{"id", row.id}, {"title", row.title}};
    for (Json::Member& member : citation_json(row.citation))
        json.push_back(std::move(member));
    json.emplace_back("functions", functions_json(row.functions));
    json.emplace_back("axis", key_of(row.axis));
    json.emplace_back("field", field_json(row.field));
    json.emplace_back("when", conditions_json(row.when));
    json.emplace_back("relaxations", relaxations_json(row.relaxations));
    json.emplace_back("criterion", criterion_json(row.criterion));
    json.emplace_back("approved_parts", key_of(row.approved_parts));
    json.emplace_back("answered_by", key_of(row.answered_by));
    json.emplace_back("union_source", row.union_source);
    json.emplace_back("state", row.state);
    json.emplace_back("of_moved_parts", row.of_moved_parts);
    json.emplace_back("proof_by", row.proof ? Json(Json::Object{{"table", row.proof->table},
                                                                {"rule", row.proof->rule}})
                                            : Json());
    return json;
}

Json table_json(const RuleTable& table)
{
    Json::Array rows, rules;
    for (const RuleRow& row : table.rows)
        rows.push_back(row_json(row));
    for (const Rule& rule : table.rules)
        rules.push_back(rule_json(rule));
    return Json::Object{{"name", table.name},       {"regulation", table.regulation},
                        {"edition", table.edition}, {"title", table.title},
                        {"rows", std::move(rows)},  {"rules", std::move(rules)}};
}

} // namespace glim
