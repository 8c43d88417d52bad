#include "report/margins_json.h"

#include "model/asked_checks.h"
#include "model/rule.h"
#include "report/csv.h"
#include "report/rule_sources.h"
#include "words/numbers.h"

namespace glim {

namespace {

constexpr int decimals = 3;

std::string_view word_of(MarginWay way)
{
    return margin_way_words[static_cast<std::size_t>(way)].word;
}

Json json_of(const std::optional<Length>& length) { return length ? Json(in_mm(*length)) : Json(); }

Json json_of(const SurfaceMargin& margin, const Study& study)
{
    return Json::Object{{"surface", study.surfaces[margin.surface].name},
                        {"way", word_of(margin.way)},
                        {"along_mm", json_of(margin.along)},
                        {"against_mm", json_of(margin.against)},
                        {"gain_mm2_per_mm", margin.gain_mm}};
}

Json json_of(const CheckMargins& check, const Study& study)
{
    Json::Array margins;
    for (const SurfaceMargin& margin : check.margins)
        margins.push_back(json_of(margin, study));
    return Json::Object{{"check", study.checks[check.check].name},
                        {"met", check.met},
                        {"margin_mm2", in_mm2(check.margin)},
                        {"left_out", check.left_out.empty() ? Json() : Json(check.left_out)},
                        {"surfaces", margins}};
}

std::string cell_of(const std::optional<Length>& length)
{
    return length ? rounded(in_mm(*length), decimals) : std::string();
}

} // namespace

Json margins_json(const MarginFindings& found, const Study& study)
{
    Json::Array checks;
    for (const CheckMargins& check : found.checks)
        checks.push_back(json_of(check, study));
    Json::Array idle;
    for (const SurfaceId s : found.idle)
        idle.push_back(study.surfaces[s].name);
    return Json::Object{{"study", study.file},
                        {"step_deg", in_degrees(found.wanted.step)},
                        {"reach_mm", in_mm(found.wanted.reach)},
                        {"accuracy_mm", in_mm(margin_accuracy)},
                        {"checks", checks},
                        {"idle_surfaces", idle},
                        {"rule_sources", rule_sources_json(asked_rows(study, found.wanted.checks))},
                        {"caution", caution}};
}

std::string margins_csv(const MarginFindings& found, const Study& study)
{
    std::string text = csv_row({"check", "met", "margin_mm2", "surface", "way", "along_mm",
                                "against_mm", "gain_mm2_per_mm"});
    for (const CheckMargins& check : found.checks)
        for (const SurfaceMargin& margin : check.margins)
            text += csv_row({study.checks[check.check].name, check.met ? "yes" : "no",
                             rounded(in_mm2(check.margin), decimals),
                             study.surfaces[margin.surface].name, std::string(word_of(margin.way)),
                             cell_of(margin.along), cell_of(margin.against),
                             rounded(margin.gain_mm, decimals)});
    return text;
}

} // namespace glim
