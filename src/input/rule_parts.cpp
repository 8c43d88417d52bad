#include "input/rule_parts.h"

#include "input/rule_conditions.h"
#include "model/nearest_word.h"
#include "model/rule_words.h"

#include <algorithm>

namespace glim {

namespace {

const RuleDraft* rule_named(const std::vector<RuleDraft>& rules, const std::string& id)
{
    const auto found = std::find_if(rules.begin(), rules.end(),
                                    [&](const RuleDraft& draft) { return draft.rule.id == id; });
    return found == rules.end() ? nullptr : &*found;
}

/// Whether `id` can be reached from the parts of `rule`. `visited` keeps circles from running on.
bool stands_on(const std::vector<RuleDraft>& rules, const RuleDraft& rule, const std::string& id,
               std::vector<const RuleDraft*>& visited)
{
    if (std::find(visited.begin(), visited.end(), &rule) != visited.end())
        return false;
    visited.push_back(&rule);
    for (const Reference& part : rule.parts) {
        if (part.name == id)
            return true;
        const RuleDraft* below = rule_named(rules, part.name);
        if (below && stands_on(rules, *below, id, visited))
            return true;
    }
    return false;
}

} // namespace

std::string read_id(TableReader& table, RuleIds& ids)
{
    table.demand("id", "give it an id of its own, by which studies ask for it");
    std::string id = table.text("id").value_or("");
    const auto first = std::find_if(ids.begin(), ids.end(),
                                    [&](const Reference& other) { return other.name == id; });
    if (!id.empty() && first != ids.end())
        table.complain("id",
                       "the id `" + id + "` is there already, on line " +
                           std::to_string(first->place.line),
                       "give one of the two another id; rows and rules share their ids");
    ids.push_back({id, table.place_of("id")});
    if (!id.empty())
        table.call_it(table.words() + " `" + id + "`");
    return id;
}

RuleDraft read_rule(TableReader& table, RuleIds& ids)
{
    RuleDraft draft;
    draft.place = table.place();
    draft.rule.id = read_id(table, ids);
    draft.rule.title = table.text("title").value_or(draft.rule.id);
    int ways = 0;
    for (const CombineWord& word : combine_words) {
        if (!table.has(word.key))
            continue;
        ++ways;
        draft.rule.combine = word.combine;
        draft.parts = table.texts(word.key);
    }
    if (ways != 1 || draft.parts.empty())
        table.complaints().add(table.place(), table.words() + " does not join parts in one way",
                               "write one of all_of = [\"row\", ...], any_of = [\"row\", ...] "
                               "and choose_one = [\"row\", ...]");
    draft.rule.when = read_vehicle_conditions(table);
    draft.rule.of_other_lamps = read_functions(table, "of_other_lamps");
    for (const Reference& part : draft.parts)
        draft.rule.parts.push_back(part.name);
    table.complain_of_unknown_keys();
    return draft;
}

void check_parts(const std::vector<RuleDraft>& rules, const RuleIds& ids, Complaints& complaints)
{
    std::vector<std::string> known;
    for (const Reference& id : ids)
        known.push_back(id.name);
    for (const RuleDraft& draft : rules) {
        for (const Reference& part : draft.parts)
            if (std::find(known.begin(), known.end(), part.name) == known.end())
                complaints.add(part.place, "there is no row or rule `" + part.name + "`",
                               did_you_mean(part.name, known));
        std::vector<const RuleDraft*> visited;
        if (!draft.rule.id.empty() && stands_on(rules, draft, draft.rule.id, visited))
            complaints.add(draft.place, "the rule `" + draft.rule.id + "` stands on itself",
                           "take one part out of the circle");
    }
}

} // namespace glim
