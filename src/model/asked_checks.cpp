#include "model/asked_checks.h"

#include <algorithm>
#include <numeric>

namespace glim {

std::vector<std::size_t> asked_checks(const Study& study, const std::vector<std::size_t>& named)
{
    if (!named.empty())
        return named;
    std::vector<std::size_t> all(study.checks.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

std::vector<const RuleRow*> asked_rows(const Study& study, const std::vector<std::size_t>& checks)
{
    std::vector<const RuleRow*> rows;
    for (const std::size_t c : checks)
        for (const RuleRow* row :
             rows_under(study.tables[study.checks[c].table], study.checks[c].rule))
            if (std::find(rows.begin(), rows.end(), row) == rows.end())
                rows.push_back(row);
    return rows;
}

} // namespace glim
