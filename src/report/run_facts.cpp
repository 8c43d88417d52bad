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

void add_names_of(const RuleTable& table, std::vector<std::string>& names)
{
    names.push_back(table.name);
    for (const RuleRow& row : table.rows)
        names.push_back(row.id);
    for (const Rule& rule : table.rules)
        names.push_back(rule.id);
}

std::vector<std::string> names_in(const Study& study)
{
    std::vector<std::string> names{study.title};
    for (const SourceFile& file : study.files)
        names.push_back(file.file);
    for (const MeshSource& mesh : study.meshes)
        names.insert(names.end(), {mesh.name, mesh.file});
    for (const Surface& surface : study.surfaces)
        names.push_back(surface.name);
    for (const Lamp& lamp : study.lamps)
        names.push_back(lamp.name);
    for (const Check& check : study.checks)
        names.push_back(check.name);
    for (const RuleTable& table : study.tables)
        add_names_of(table, names);
    return names;
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
        if (ground.of_rules())
            facts.ground_states.push_back(ground.state);
    facts.meshes = study.meshes;
    facts.files = study.files;
    for (const Warning& warning : study.warnings)
        facts.warnings.push_back(as_seen_from(file.parent_path(), warning));
    facts.names = names_in(study);
    facts.names.insert(facts.names.end(), {facts.study, facts.command});
    return facts;
}

} // namespace glim
