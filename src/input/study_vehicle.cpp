#include "input/study_vehicle.h"

#include "input/axis_words.h"
#include "input/load_states.h"
#include "input/study_section.h"
#include "units/trig.h"

#include <Eigen/Geometry>

#include <cmath>

namespace glim {

namespace {

/// A ground that is steeper than this is a slip of the pen, and no state of load.
constexpr Angle most_ground_tilt = degrees(10);

struct ModelledSideWord {
    Side side; ///< median: the whole body
    std::string_view word;
};
constexpr std::array modelled_side_words = {
    ModelledSideWord{Side::left, "left"},
    ModelledSideWord{Side::right, "right"},
    ModelledSideWord{Side::median, "both"},
};

std::optional<Length> positive_length(TableReader& table, std::string_view key)
{
    const std::optional<Length> length = table.length(key);
    if (!length || *length > millimetres(0))
        return length;
    table.complain(key, "`" + std::string(key) + "` of " + table.words() + " is not above 0",
                   "write a length in mm");
    return std::nullopt;
}

void check_outer_edge(TableReader& table, const Vehicle& vehicle)
{
    if (!vehicle.overall_width || !vehicle.extreme_outer_edge)
        return;
    const double share = *vehicle.extreme_outer_edge / *vehicle.overall_width;
    if (share > 0.5)
        table.complain("extreme_outer_edge",
                       "`extreme_outer_edge` of [vehicle] lies outside the overall width",
                       "write the distance from the median plane to one side, at most half the "
                       "overall width");
}

/// The plane through both points, level across the vehicle.
std::optional<Ground> ground_below(TableReader& axles, const std::optional<Vehicle>& vehicle)
{
    axles.demand("front", "write front = [x, y, z], a point of the ground below the front axle");
    axles.demand("rear", "write rear = [x, y, z], a point of the ground below the rear axle");
    const std::optional<Vector> front = axles.vector("front");
    const std::optional<Vector> rear = axles.vector("rear");
    finish_section(axles, "ground.unladen.axles");
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
    plane.demand("point", "write point = [x, y, z], a point of the ground");
    plane.demand("normal", "write normal = [x, y, z], perpendicular to the ground");
    const std::optional<Vector> point = plane.vector("point");
    const std::optional<Vector> normal = plane.vector("normal");
    finish_section(plane, "ground.unladen.plane");
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

void demand_one_way(TableReader& state)
{
    const int ways = state.has("height") + state.has("axles") + state.has("plane");
    if (ways == 1)
        return;
    state.complaints().add(state.place(),
                           state.words() + (ways == 0 ? " does not say where the ground is"
                                                      : " says more than once where the ground is"),
                           "write one of height = (mm along the axis that points up), axles = { "
                           "front = [x, y, z], rear = [x, y, z] } and plane = { point = [x, y, z], "
                           "normal = [x, y, z] }");
}

std::optional<Ground> read_state(TableReader& state, const std::optional<Vehicle>& vehicle)
{
    demand_one_way(state);
    const std::optional<Length> height = state.length("height");
    std::optional<TableReader> axles = state.table("axles", "`axles` of " + state.words());
    std::optional<TableReader> plane = state.table("plane", "`plane` of " + state.words());
    finish_section(state, "ground.unladen");
    if (axles)
        return ground_below(*axles, vehicle);
    if (plane)
        return ground_in_plane(*plane, vehicle);
    if (!height || !vehicle)
        return std::nullopt;
    return Ground{in_mm(*height) * vehicle->up.vector(), vehicle->up};
}

} // namespace

std::optional<Vehicle> read_vehicle(TableReader& study)
{
    study.demand("vehicle", "add [vehicle] with its axes and its modelled side");
    std::optional<TableReader> table = study.table("vehicle", "[vehicle]");
    if (!table)
        return std::nullopt;
    Vehicle vehicle;
    vehicle.category = table->text("category").value_or("");
    vehicle.market = table->text("market").value_or("");
    vehicle.median = table->length("median").value_or(millimetres(0));
    vehicle.overall_width = positive_length(*table, "overall_width");
    vehicle.extreme_outer_edge = positive_length(*table, "extreme_outer_edge");
    check_outer_edge(*table, vehicle);
    const std::optional<FrameAxes> axes = read_axes(*table);
    table->demand("modelled_side",
                  "write \"left\" or \"right\" for a half model, \"both\" for a whole body");
    const auto* side = table->row_of("modelled_side", modelled_side_words, &ModelledSideWord::word);
    finish_section(*table, "vehicle");
    if (!axes || !side)
        return std::nullopt;
    vehicle.forward = axes->forward;
    vehicle.up = axes->up;
    vehicle.modelled_side = side->side;
    return vehicle;
}

std::vector<GroundState> read_grounds(TableReader& study, const std::optional<Vehicle>& vehicle)
{
    std::vector<GroundState> grounds;
    study.demand("ground", "add [ground.unladen], [ground.curb] or [ground.design]");
    std::optional<TableReader> table = study.table("ground", "[ground]");
    if (!table)
        return grounds;
    bool is_any_named = false;
    for (const std::string& word : load_states) {
        is_any_named = is_any_named || table->has(word);
        if (std::optional<TableReader> state = table->table(word, "[ground." + word + "]"))
            if (const std::optional<Ground> ground = read_state(*state, vehicle))
                grounds.push_back({word, *ground});
    }
    const std::size_t complaints_before = table->complaints().size();
    finish_section(*table, "ground");
    if (!is_any_named && table->complaints().size() == complaints_before)
        table->complaints().add(table->place(), "[ground] names no state of load",
                                "rules differ in the state of load: head it [ground.unladen], "
                                "[ground.curb] or [ground.design]");
    return grounds;
}

} // namespace glim
