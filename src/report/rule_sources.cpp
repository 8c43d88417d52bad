#include "report/rule_sources.h"

#include "report/rule_json.h"
#include "words/citation_words.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

std::string provenance_note(const std::vector<const RuleRow*>& rows)
{
    const auto unverified = std::count_if(rows.begin(), rows.end(), [](const RuleRow* row) {
        return row->citation.provenance != Provenance::read;
    });
    return std::to_string(unverified) + " of " + counted(rows.size(), "row") +
           (unverified == 1 ? " was" : " were") +
           " not read in the published text: look up each figure in the edition in force "
           "before anybody relies on it. The provenance of every row stands below.";
}

Terms rule_sources(const std::vector<const RuleRow*>& rows)
{
    Terms terms;
    for (const RuleRow* row : rows)
        terms.terms.push_back({row->id, {row->title, citation_words(row->citation)}});
    return terms;
}

Json rule_sources_json(const std::vector<const RuleRow*>& rows)
{
    Json::Array all;
    for (const RuleRow* row : rows) {
        Json::Object json{{"row", row->id}, {"title", row->title}};
        for (Json::Member& member : citation_json(row->citation))
            json.push_back(std::move(member));
        all.push_back(std::move(json));
    }
    return all;
}

} // namespace glim
