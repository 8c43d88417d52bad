#include "judgement/asked_lamps.h"

#include "judgement/conditions.h"

#include <algorithm>

namespace glim {

namespace {

std::vector<LampFunction> functions_of_others(const RuleTable& table, const std::string& id)
{
    std::vector<LampFunction> functions;
    for (const Rule* rule : rules_under(table, id))
        functions.insert(functions.end(), rule->of_other_lamps.begin(), rule->of_other_lamps.end());
    return functions;
}

std::vector<LampId> consulted_lamps(const Study& study, const Check& check)
{
    const std::vector<LampFunction> functions =
        functions_of_others(study.tables[check.table], check.rule);
    std::vector<LampId> lamps = study.lamps.ids();
    std::erase_if(lamps, [&](LampId lamp) {
        const bool named = std::find(functions.begin(), functions.end(),
                                     study.lamps[lamp].function) != functions.end();
        const bool asked =
            std::find(check.lamps.begin(), check.lamps.end(), lamp) != check.lamps.end();
        return !named || asked;
    });
    return lamps;
}

/// Walks down from a rule and notes how it comes to one row.
struct Walk {
    const RuleTable& table;
    const Vehicle& vehicle;
    std::string_view row;
    Reached reached = {};

    void down(const std::string& id, bool others)
    {
        if (id == row)
            (others ? reached.through_others : reached.directly) = true;
        const Rule* rule = table.rule(id);
        if (!rule || !all_hold(rule->when, vehicle))
            return;
        for (const std::string& part : rule->parts)
            down(part, others || !rule->of_other_lamps.empty());
    }
};

} // namespace

AskedLamps asked_lamps(const Study& study, const PreparedScene& scene, const Check& check)
{
    AskedLamps all;
    const auto add = [&](const std::vector<LampId>& lamps, bool consulted) {
        for (const LampId lamp : lamps) {
            all.standings.push_back({lamp, false});
            all.consulted.push_back(consulted);
        }
        for (const LampId lamp : lamps)
            if (study.lamps[lamp].paired && !scene.is_symmetric()) {
                all.standings.push_back({lamp, true});
                all.consulted.push_back(consulted);
            }
    };
    add(check.lamps, false);
    add(consulted_lamps(study, check), true);
    return all;
}

Reached reach_of_row(const Study& study, const Check& check, std::string_view row)
{
    Walk walk{study.tables[check.table], study.vehicle, row};
    walk.down(check.rule, false);
    return walk.reached;
}

} // namespace glim
