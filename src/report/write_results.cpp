#include "report/write_results.h"

#include "report/coloured_mesh.h"
#include "report/directions_csv.h"
#include "report/facets_csv.h"
#include "report/file_names.h"
#include "report/result_json.h"
#include "report/summary.h"
#include "report/verdicts_csv.h"

namespace glim {

namespace {

void put_blocking_meshes(const Findings& findings, const Study& study, NewFolder& folder)
{
    std::vector<std::string> checks;
    for (const CheckFindings& check : findings.checks)
        checks.push_back(check.name);
    const std::vector<std::string> names = plain_names(checks);
    for (std::size_t i = 0; i < names.size(); ++i) {
        const CheckFindings& check = findings.checks[i];
        if (!check.deciding || check.deciding_verdict().blockers.empty())
            continue;
        const std::vector<BlockingSurface> surfaces =
            blocking_surfaces(check.deciding_verdict(), study);
        folder.put("blocking/" + names[i] + ".ply", coloured_ply(surfaces));
        folder.put("blocking/" + names[i] + ".obj", coloured_obj(surfaces, names[i] + ".mtl"));
        folder.put("blocking/" + names[i] + ".mtl", colour_materials());
    }
}

} // namespace

void write_results(const Findings& findings, const Study& study, const RunFacts& facts,
                   NewFolder& folder)
{
    folder.put("result.json", text_of(result_json(findings, facts)));
    folder.put("directions.csv", directions_csv(findings));
    folder.put("verdicts.csv", verdicts_csv(findings));
    folder.put("facets.csv", facets_csv(findings));
    folder.put("summary.txt", summary(findings, facts));
    put_blocking_meshes(findings, study, folder);
    folder.commit();
}

} // namespace glim
