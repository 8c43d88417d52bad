#include "remedy/comparison.h"

#include <algorithm>

namespace glim {

namespace {

JudgedOption judged(OptionToCompare& option, const Study& first, const Programme& programme,
                    const Workers& workers)
{
    return {std::move(option.name),
            std::move(option.file),
            std::move(option.findings),
            lamps_added(first, option.study),
            surfaces_added(first, option.study),
            lamps_added(option.study, first),
            surfaces_added(option.study, first),
            surface_changes(first, option.study, workers),
            cost_sum(option.costs, option.others_cost_nothing, programme)};
}

std::vector<std::string> checks_of(const std::vector<JudgedOption>& options)
{
    std::vector<std::string> names;
    for (const JudgedOption& option : options)
        for (const CheckFindings& check : option.findings.checks)
            if (std::find(names.begin(), names.end(), check.name) == names.end())
                names.push_back(check.name);
    return names;
}

std::vector<CostEntry> only_in(const std::vector<CostEntry>& missing,
                               const std::vector<CostEntry>& others)
{
    std::vector<CostEntry> only;
    for (const CostEntry entry : missing)
        if (std::find(others.begin(), others.end(), entry) == others.end())
            only.push_back(entry);
    return only;
}

} // namespace

Comparison compare(std::vector<OptionToCompare> options, const Programme& programme,
                   const Workers& workers)
{
    Comparison comparison{.programme = programme, .checks = {}, .options = {}, .break_evens = {}};
    const Study& first = options.front().study;
    for (OptionToCompare& option : options)
        comparison.options.push_back(judged(option, first, programme, workers));
    comparison.checks = checks_of(comparison.options);
    for (std::size_t i = 0; i < comparison.options.size(); ++i)
        for (std::size_t j = i + 1; j < comparison.options.size(); ++j) {
            const CostSum& one = comparison.options[i].cost;
            const CostSum& other = comparison.options[j].cost;
            comparison.break_evens.push_back({i, j, break_even(one, other),
                                              only_in(one.missing, other.missing),
                                              only_in(other.missing, one.missing)});
        }
    return comparison;
}

const CheckFindings* answer_of(const JudgedOption& option, std::string_view check)
{
    const auto& checks = option.findings.checks;
    const auto found = std::find_if(checks.begin(), checks.end(),
                                    [&](const CheckFindings& c) { return c.name == check; });
    return found == checks.end() ? nullptr : &*found;
}

} // namespace glim
