#include "words/rule_source_words.h"

#include "words/citation_words.h"

#include <algorithm>

namespace glim {

std::string rule_sources_words(const std::vector<const RuleRow*>& rows, const TextStyle& style)
{
    constexpr int indent = 2;
    if (rows.empty())
        return "";
    std::vector<Labelled> entries;
    entries.reserve(rows.size());
    for (const RuleRow* row : rows)
        entries.push_back({row->id, citation_words(row->citation)});
    return "Where the figures of the rules come from\n" + labelled_block(entries, indent, style);
}

std::vector<const RuleRow*> rows_in(const Findings& findings)
{
    std::vector<const RuleRow*> rows;
    for (const CheckFindings& check : findings.checks)
        for (const RowFindings& row : check.rows)
            if (std::none_of(rows.begin(), rows.end(),
                             [&](const RuleRow* known) { return known->id == row.row.id; }))
                rows.push_back(&row.row);
    return rows;
}

} // namespace glim
