#include "judgement/conditions.h"

#include <algorithm>
#include <cassert>

namespace glim {

namespace {

bool holds(const Condition& c, const Vehicle& vehicle)
{
    if (c.quantity == Measured::vehicle_category)
        return c.holds(vehicle.category);
    assert(c.quantity == Measured::overall_width);
    return vehicle.overall_width && c.holds(*vehicle.overall_width);
}

bool holds(const Condition& c, const Study& study, const Lamp& lamp, const LampLook& look,
           std::string_view category)
{
    switch (c.quantity) {
    case Measured::overall_width:
    case Measured::vehicle_category:
        break;
    case Measured::axis_height:
    case Measured::h_plane_height: // both run through the centre of reference
        return c.holds(look.axis_height);
    case Measured::lamp_category:
        return c.holds(category);
    case Measured::optional_lamp:
        return c.holds(lamp.optional ? "yes" : "no");
    }
    return holds(c, study.vehicle);
}

} // namespace

bool all_hold(const std::vector<Condition>& conditions, const Study& study, const Lamp& lamp,
              const LampLook& look, std::string_view category)
{
    return std::all_of(conditions.begin(), conditions.end(),
                       [&](const Condition& c) { return holds(c, study, lamp, look, category); });
}

bool all_hold(const std::vector<Condition>& conditions, const Study& study, const Lamp& lamp,
              const LampLook& look)
{
    return all_hold(conditions, study, lamp, look, lamp.category);
}

bool all_hold(const std::vector<Condition>& conditions, const Vehicle& vehicle)
{
    return std::all_of(conditions.begin(), conditions.end(),
                       [&](const Condition& c) { return holds(c, vehicle); });
}

bool speaks_of(const RuleRow& row, LampFunction function)
{
    return row.functions.empty() ||
           std::find(row.functions.begin(), row.functions.end(), function) != row.functions.end();
}

} // namespace glim
