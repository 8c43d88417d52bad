#include "report/situations_json.h"

#include "model/rule.h"
#include "report/csv.h"
#include "report/rule_json.h"
#include "words/keys.h"
#include "words/look_words.h"
#include "words/numbers.h"
#include "words/row_words.h"
#include "words/situation_words.h"

#include <Eigen/Geometry>

namespace glim {

namespace {

Json vector_json(const Vector& v) { return Json::Array{v.x(), v.y(), v.z()}; }

Json states_json(const Study& study)
{
    Json::Array all;
    for (const GroundState& ground : study.grounds) {
        const bool own = !ground.of_rules();
        all.push_back(
            Json::Object{{"name", ground.state},
                         {"of_rules", ground.of_rules()},
                         {"from", own ? Json(ground.own->from) : Json()},
                         {"rise_mm", own ? Json(in_mm(ground.own->rise)) : Json()},
                         {"pitch_nose_up_deg", own ? Json(in_degrees(ground.own->pitch)) : Json()},
                         {"ground_point_mm", vector_json(ground.ground.on)},
                         {"ground_up", vector_json(ground.ground.up.vector())}});
    }
    return all;
}

Json moved_parts_json(const Study& study)
{
    Json::Array all;
    for (const MovedPart& part : study.moved_parts) {
        Json::Array surfaces, positions;
        for (const SurfaceId s : part.surfaces)
            surfaces.push_back(study.surfaces[s].name);
        for (const PartPosition& position : part.positions)
            positions.push_back(position.name);
        all.push_back(
            Json::Object{{"name", part.name}, {"surfaces", surfaces}, {"positions", positions}});
    }
    return all;
}

Json moved_json(const Situation& situation, const Study& study)
{
    if (!situation.moved)
        return {};
    const MovedPart& part = study.moved_parts[situation.moved->part];
    return Json::Object{{"part", part.name},
                        {"position", part.positions[situation.moved->position].name}};
}

Json lamp_json(const LampVerdict& verdict, const LampLook& look)
{
    Json::Object json{{"lamp", label_of(look)},
                      {"outcome", key_of(verdict.outcome)},
                      {"state", look.state},
                      {"axis_height_mm", in_mm(look.axis_height)},
                      {"relaxed", verdict.relaxation.has_value()},
                      {"field", field_json(verdict.field)}};
    const bool looked = has_areas(verdict);
    const std::size_t at = looked ? worst_at(verdict) : 0;
    const auto if_looked = [&](double figure) { return looked ? Json(figure) : Json(); };
    const auto area = [&](auto figure) { return looked ? Json(in_mm2(figure())) : Json(); };
    json.emplace_back("needed_mm2", if_looked(in_mm2(verdict.needed)));
    json.emplace_back("least_visible_mm2", if_looked(in_mm2(verdict.least_visible)));
    json.emplace_back("hidden_mm2", if_looked(in_mm2(verdict.hidden)));
    json.emplace_back("approved_mm2", area([&] { return look.approved(at); }));
    json.emplace_back("worst_h_deg", looked ? Json(in_degrees(look.toward[at].h)) : Json());
    json.emplace_back("worst_v_deg", looked ? Json(in_degrees(look.toward[at].v)) : Json());
    return json;
}

Json rows_json(const CheckFindings& check, const std::vector<LampLook>& looks)
{
    Json::Array rows;
    for (const RowFindings& row : check.rows) {
        Json::Array lamps;
        for (const LampVerdict& verdict : row.lamps)
            lamps.push_back(lamp_json(verdict, looks[verdict.look]));
        Json::Object json{{"row", row.row.id}};
        for (Json::Member& member : citation_json(row.row.citation))
            json.push_back(std::move(member));
        json.emplace_back("lamps", std::move(lamps));
        json.emplace_back("together", row.together
                                          ? lamp_json(*row.together, looks[row.together->look])
                                          : Json());
        rows.push_back(std::move(json));
    }
    return rows;
}

std::vector<std::string> figures(const LampVerdict& verdict, const LampLook& look)
{
    if (!has_areas(verdict))
        return std::vector<std::string>(6);
    const std::size_t at = worst_at(verdict);
    return {csv_number(verdict.needed),    csv_number(verdict.least_visible),
            csv_number(verdict.hidden),    csv_number(look.approved(at)),
            csv_number(look.toward[at].h), csv_number(look.toward[at].v)};
}

} // namespace

Json situations_json(const SituationFindings& found, const Study& study, const std::string& command)
{
    Json::Array situations;
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        const Situation& s = found.situations[i];
        const CheckFindings& check = found.at(i);
        situations.push_back(Json::Object{
            {"check", check.name},
            {"rule", check.rule},
            {"regulation", check.regulation},
            {"counts_as", standing_words(s)},
            {"state", s.state.empty() ? Json() : Json(s.state)},
            {"moved", moved_json(s, study)},
            {"outcome", key_of(check.outcome)},
            {"because", key_of(check.because)},
            {"decided_by", check.deciding ? Json(check.deciding_row().row.id) : Json()},
            {"rows", rows_json(check, found.found.looks)}});
    }
    return Json::Object{{"command", command},
                        {"caution", caution},
                        {"study", study.file},
                        {"step_deg", in_degrees(found.found.sampling.step)},
                        {"states", states_json(study)},
                        {"moved_parts", moved_parts_json(study)},
                        {"situations", std::move(situations)}};
}

std::string situations_csv(const SituationFindings& found, const Study& study)
{
    std::string csv =
        csv_row({"check", "counts_as", "state", "moved_part", "position", "check_outcome", "row",
                 "lamp", "outcome", "axis_height_mm", "relaxed", "needed_mm2", "least_visible_mm2",
                 "hidden_mm2", "approved_mm2", "worst_h_deg", "worst_v_deg", "provenance"});
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        const Situation& s = found.situations[i];
        const CheckFindings& check = found.at(i);
        const MovedPart* part = s.moved ? &study.moved_parts[s.moved->part] : nullptr;
        for (const RowFindings& row : check.rows)
            for (const LampVerdict* verdict : verdicts_of(row)) {
                const LampLook& look = found.found.looks[verdict->look];
                std::vector<std::string> cells = {check.name,
                                                  std::string(standing_words(s)),
                                                  look.state,
                                                  part ? part->name : "",
                                                  part ? part->positions[s.moved->position].name
                                                       : "",
                                                  std::string(key_of(check.outcome)),
                                                  row.row.id,
                                                  label_of(look),
                                                  std::string(key_of(verdict->outcome)),
                                                  csv_number(look.axis_height),
                                                  verdict->relaxation ? "yes" : "no"};
                for (std::string& cell : figures(*verdict, look))
                    cells.push_back(std::move(cell));
                cells.emplace_back(key_of(row.row.citation.provenance));
                csv += csv_row(cells);
            }
    }
    return csv;
}

} // namespace glim
