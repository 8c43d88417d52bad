#include "report/run_facts.h"

#include <filesystem>

namespace glim {

namespace {

Warning as_seen_from(const std::filesystem::path& folder, Warning warning)
{
    const std::filesystem::path file(warning.place.file);
    if (!warning.place.file.empty())
        warning.place.file = file.lexically_proximate(folder).generic_string();
    return warning;
}

} // namespace

RunFacts run_facts(const Study& study, std::string program_version, std::string command)
{
    const std::filesystem::path file(study.file);
    RunFacts facts;
    facts.program_version = std::move(program_version);
    facts.command = std::move(command);
    facts.study = file.filename().string();
    for (const GroundState& ground : study.grounds)
        facts.ground_states.push_back(ground.state);
    facts.meshes = study.meshes;
    facts.files = study.files;
    for (const Warning& warning : study.warnings)
        facts.warnings.push_back(as_seen_from(file.parent_path(), warning));
    return facts;
}

} // namespace glim
