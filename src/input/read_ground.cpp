#include "input/read_ground.h"

#include "input/study_section.h"
#include "units/trig.h"

#include <Eigen/Geometry>

#include <cmath>

namespace glim {

namespace {

/// The plane through both points, level across the vehicle.
std::optional<Ground> ground_below(TableReader& axles, const std::optional<Vehicle>& vehicle)
{
    const std::optional<Vector> front = axles.vector("front");
    const std::optional<Vector> rear = axles.vector("rear");
    if (!front || !rear || !vehicle)
        return std::nullopt;
    const Vector wheelbase = *front - *rear;
    if (vehicle->forward.dot(wheelbase) <= 0) {
        axles.complain("front", "the front axle does not lie ahead of the rear axle",
                       "exchange the two points, or correct `forward` of [vehicle]");
        return std::nullopt;
    }
    return Ground{*front, Direction::along(wheelbase.cross(vehicle->left().vector()))};
}

/// The plane as written; its normal may point down and is turned up.
std::optional<Ground> ground_in_plane(TableReader& plane, const std::optional<Vehicle>& vehicle)
{
    const std::optional<Vector> point = plane.vector("point");
    const std::optional<Vector> normal = plane.vector("normal");
    if (!point || !normal || !vehicle)
        return std::nullopt;
    const double upward = vehicle->up.dot(*normal);
    if (std::abs(upward) <= normal->norm() * cos(most_ground_tilt)) {
        plane.complain("normal", "`normal` of " + plane.words() + " is not within 10 degrees of up",
                       "write the direction perpendicular to the ground, such as [0.01, 0, 1]");
        return std::nullopt;
    }
    return Ground{*point, Direction::along(upward > 0 ? *normal : Vector(-*normal))};
}

} // namespace

int grounds_given(const TableReader& table)
{
    return table.has("height") + table.has("axles") + table.has("plane");
}

std::optional<Ground> read_ground(TableReader& table, std::string_view section,
                                  const std::optional<Vehicle>& vehicle)
{
    const std::optional<Length> height = table.length("height");
    std::optional<Ground> ground;
    if (height && vehicle)
        ground = Ground{in_mm(*height) * vehicle->up.vector(), vehicle->up};
    if (std::optional<TableReader> axles = table.table("axles", "`axles` of " + table.words())) {
        axles->demand("front",
                      "write front = [x, y, z], a point of the ground below the front axle");
        axles->demand("rear", "write rear = [x, y, z], a point of the ground below the rear axle");
        ground = ground_below(*axles, vehicle);
        finish_section(*axles, std::string(section) + ".axles");
    }
    if (std::optional<TableReader> plane = table.table("plane", "`plane` of " + table.words())) {
        plane->demand("point", "write point = [x, y, z], a point of the ground");
        plane->demand("normal", "write normal = [x, y, z], perpendicular to the ground");
        ground = ground_in_plane(*plane, vehicle);
        finish_section(*plane, std::string(section) + ".plane");
    }
    return ground;
}

std::optional<Ground> read_ground_of(TableReader& state, const std::optional<Vehicle>& vehicle)
{
    constexpr std::string_view section = "ground.unladen"; // stands for all three
    if (const int ways = grounds_given(state); ways != 1)
        state.complaints().add(state.place(),
                               state.words() + (ways == 0
                                                    ? " does not say where the ground is"
                                                    : " says more than once where the ground is"),
                               "write one of " + std::string(ways_to_give_ground));
    std::optional<Ground> ground = read_ground(state, section, vehicle);
    finish_section(state, section);
    return ground;
}

} // namespace glim
