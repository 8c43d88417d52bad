#include "model/rule.h"

#include <algorithm>

namespace glim {

namespace {

template <class Thing>
const Thing* with_id(const std::vector<Thing>& things, std::string_view id)
{
    const auto found = std::find_if(things.begin(), things.end(),
                                    [&](const Thing& thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

} // namespace

bool Condition::holds(Length value) const
{
    return (!at_least || value >= *at_least) && (!below || value < *below);
}

const RuleRow* RuleTable::row(std::string_view id) const
{
    return with_id(rows, id);
}

const Rule* RuleTable::rule(std::string_view id) const
{
    return with_id(rules, id);
}

} // namespace glim
