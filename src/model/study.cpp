#include "model/study.h"

#include <algorithm>

namespace glim {

const GroundState* Study::ground_in(std::string_view state) const
{
    const auto found = std::find_if(grounds.begin(), grounds.end(),
                                    [&](const GroundState& g) { return g.state == state; });
    return found == grounds.end() ? nullptr : &*found;
}

const LampLight* Study::light_of(LampId lamp) const
{
    const auto found = std::find_if(lights.begin(), lights.end(),
                                    [&](const LampLight& light) { return light.lamp == lamp; });
    return found == lights.end() ? nullptr : &*found;
}

const RuleTable* Study::table_named(std::string_view name) const
{
    const auto found = std::find_if(tables.begin(), tables.end(),
                                    [&](const RuleTable& table) { return table.name == name; });
    return found == tables.end() ? nullptr : &*found;
}

} // namespace glim
