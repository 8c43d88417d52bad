#include "report/moved_lamp_json.h"

#include "model/asked_checks.h"
#include "model/rule.h"
#include "report/csv.h"
#include "report/rule_sources.h"
#include "words/moved_lamp_words.h"
#include "words/numbers.h"

namespace glim {

namespace {

const MoveWayWord& word_of(MoveWay way) { return move_way_words[static_cast<std::size_t>(way)]; }

std::string key_with_unit(MoveWay way)
{
    return std::string(word_of(way).key) + "_" + std::string(word_of(way).unit);
}

Json move_json(const LampMove& move)
{
    Json::Object json;
    for (const MoveWayWord& word : move_way_words)
        json.emplace_back(key_with_unit(word.way), move[word.way]);
    return json;
}

Json ways_json(const MovedLampAnswer& answer, const MoveLampTask& task)
{
    Json::Array all;
    for (const WayAnswer& way : answer.ways) {
        const MoveLimits& limits = task.limits[static_cast<std::size_t>(way.way)];
        all.push_back(
            Json::Object{{"way", word_of(way.way).key},
                         {"unit", word_of(way.way).unit},
                         {"limit", way.positive ? limits.most : limits.least},
                         {"least", way.least ? Json(*way.least) : Json()},
                         {"lit_face_moves_mm", way.least ? Json(in_mm(way.farthest)) : Json()}});
    }
    return all;
}

Json least_json(const MovedLampAnswer& answer)
{
    if (!answer.least)
        return {};
    Json::Array outcomes;
    for (const Outcome outcome : answer.confirmed)
        outcomes.emplace_back(key_of(outcome));
    return Json::Object{{"move", move_json(*answer.least)},
                        {"lit_face_moves_mm", in_mm(answer.farthest)},
                        {"outcomes", std::move(outcomes)}};
}

} // namespace

Json moved_lamp_json(const MovedLampAnswer& answer, const Study& study, const MoveLampTask& task)
{
    Json::Array checks, surfaces;
    for (const std::size_t c : answer.checks)
        checks.emplace_back(study.checks[c].name);
    for (const SurfaceId s : answer.surfaces)
        surfaces.emplace_back(study.surfaces[s].name);
    return Json::Object{
        {"caution", caution},
        {"rule_sources", rule_sources_json(asked_rows(study, asked_checks(study, task.checks)))},
        {"answer", moved_lamp_sentence(answer, study)},
        {"lamp", study.lamps[answer.lamp].name},
        {"checks", std::move(checks)},
        {"met_as_drawn", answer.met_as_drawn},
        {"least_found", least_json(answer)},
        {"one_way_alone", ways_json(answer, task)},
        {"moves", std::move(surfaces)},
        {"step_deg", in_degrees(answer.step)},
        {"moves_looked_at", static_cast<long long>(answer.tried)}};
}

std::string move_map_csv(const MoveMap& map)
{
    std::string text = csv_row(
        {key_with_unit(map.ways[0]), key_with_unit(map.ways[1]), "outcome", "relative_margin"});
    constexpr int decimals = 4;
    for (std::size_t j = 0; j < map.up.size(); ++j)
        for (std::size_t i = 0; i < map.across.size(); ++i) {
            const QuickAnswer& answer = map.answers[j * map.across.size() + i];
            text +=
                csv_row({rounded(map.across[i], decimals), rounded(map.up[j], decimals),
                         std::string(key_of(answer.outcome)), rounded(answer.margin, decimals)});
        }
    return text;
}

} // namespace glim
