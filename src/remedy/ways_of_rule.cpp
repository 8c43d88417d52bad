#include "remedy/ways_of_rule.h"

#include <algorithm>

namespace glim {

namespace {

class Ways {
public:
    Ways(const RuleTable& table, const RowKept& kept) : table_(table), kept_(kept) {}

    /// Nothing where no row below asks for a space.
    std::optional<bool> kept(const std::string& id) const
    {
        const Rule* rule = table_.rule(id);
        if (!rule)
            return kept_(id);
        bool any = false, all = true, one = false;
        for (const std::string& part : rule->parts)
            if (const std::optional<bool> part_kept = kept(part)) {
                any = true;
                all = all && *part_kept;
                one = one || *part_kept;
            }
        if (!any)
            return std::nullopt;
        return rule->combine == Combine::any_of ? one : all;
    }

    void add_rows(const std::string& id, std::set<std::string>& rows) const
    {
        const Rule* rule = table_.rule(id);
        if (!rule) {
            rows.insert(id);
            return;
        }
        const bool one_is_enough = rule->combine == Combine::any_of && kept(id).value_or(false);
        for (const std::string& part : rule->parts)
            if (!one_is_enough || kept(part).value_or(false))
                add_rows(part, rows);
    }

private:
    const RuleTable& table_;
    const RowKept& kept_;
};

} // namespace

std::vector<WaysOfRule> ways_of_rule(const RuleTable& table, const std::string& id,
                                     const RowKept& kept)
{
    std::vector<WaysOfRule> choices;
    for (const Rule* rule : rules_under(table, id)) {
        if (rule->combine != Combine::any_of)
            continue;
        WaysOfRule ways;
        for (const std::string& part : rule->parts) {
            std::vector<std::string> rows;
            for (const RuleRow* row : rows_under(table, part))
                if (kept(row->id))
                    rows.push_back(row->id);
            if (!rows.empty())
                ways.push_back(std::move(rows));
        }
        if (ways.size() > 1)
            choices.push_back(std::move(ways));
    }
    return choices;
}

std::set<std::string> rows_that_count(const RuleTable& table, const std::string& id,
                                      const RowKept& kept)
{
    std::set<std::string> rows;
    Ways(table, kept).add_rows(id, rows);
    return rows;
}

} // namespace glim
