#include "report/rule_sources.h"

#include "words/citation_words.h"

#include <algorithm>

namespace glim {

std::vector<const RuleRow*> rows_asked(const Study& study, const std::vector<std::size_t>& checks)
{
    std::vector<const RuleRow*> rows;
    for (const std::size_t c : checks)
        for (const RuleRow* row :
             rows_under(study.tables[study.checks[c].table], study.checks[c].rule))
            if (std::find(rows.begin(), rows.end(), row) == rows.end())
                rows.push_back(row);
    return rows;
}

std::string provenance_note(const std::vector<const RuleRow*>& rows)
{
    const auto unverified = std::count_if(rows.begin(), rows.end(), [](const RuleRow* row) {
        return row->citation.provenance != Provenance::read;
    });
    return std::to_string(unverified) + " of " + std::to_string(rows.size()) +
           " rows were not read in the published text: look up each figure in the edition in force "
           "before anybody relies on it. The provenance of every row stands below.";
}

Terms rule_sources(const std::vector<const RuleRow*>& rows)
{
    Terms terms;
    for (const RuleRow* row : rows)
        terms.terms.push_back({row->id, {row->title, citation_words(row->citation)}});
    return terms;
}

} // namespace glim
