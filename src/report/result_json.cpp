#include "report/result_json.h"

#include "model/rule.h"
#include "report/health_json.h"
#include "report/look_json.h"
#include "report/verdict_json.h"
#include "words/keys.h"

#include <algorithm>

namespace glim {

namespace {

std::string_view word_of(Certify certify)
{
    return std::find_if(certify_words.begin(), certify_words.end(),
                        [&](const CertifyWord& w) { return w.certify == certify; })
        ->word;
}

Json sampling_json(const Sampling& sampling)
{
    return Json::Object{
        {"step_deg", in_degrees(sampling.step)}, {"feature_mm", in_mm(sampling.feature)},
        {"touch_mm", in_mm(sampling.touch)},     {"hairline_mm", in_mm(sampling.hairline)},
        {"certify", word_of(sampling.certify)},  {"finest_deg", in_degrees(sampling.finest)}};
}

Json meshes_json(const std::vector<MeshSource>& meshes)
{
    Json::Array all;
    for (const MeshSource& m : meshes)
        all.push_back(Json::Object{{"name", m.name},
                                   {"file", m.file},
                                   {"unit", m.unit},
                                   {"up", m.up},
                                   {"forward", m.forward},
                                   {"chord_mm", in_mm(m.chord.error)},
                                   {"chord_estimated", m.chord.estimated},
                                   {"health", health_json(m.health)}});
    return all;
}

Json files_json(const std::vector<SourceFile>& files)
{
    Json::Array all;
    for (const SourceFile& f : files)
        all.push_back(Json::Object{{"file", f.file},
                                   {"use", key_of(f.use)},
                                   {"bytes", f.is.bytes},
                                   {"sha256", f.is.sha256}});
    return all;
}

Json warnings_json(const std::vector<Warning>& warnings)
{
    Json::Array all;
    for (const Warning& w : warnings)
        all.push_back(
            Json::Object{{"place", w.place.words()}, {"what", w.what}, {"remedy", w.remedy}});
    return all;
}

} // namespace

Json result_json(const Findings& findings, const RunFacts& facts)
{
    Json::Array checks, lamps;
    for (const CheckFindings& check : findings.checks)
        checks.push_back(check_json(findings, check));
    for (const LampLook& look : findings.looks)
        lamps.push_back(look_json(look));
    return Json::Object{
        {"schema_version", result_schema_version},
        {"program_version", facts.program_version},
        {"command", facts.command},
        {"study", facts.study},
        {"title", findings.title},
        {"caution", caution},
        {"ground_states", Json::Array(facts.ground_states.begin(), facts.ground_states.end())},
        {"sampling", sampling_json(findings.sampling)},
        {"checks", std::move(checks)},
        {"lamps", std::move(lamps)},
        {"warnings", warnings_json(facts.warnings)},
        {"meshes", meshes_json(facts.meshes)},
        {"files", files_json(facts.files)}};
}

} // namespace glim
