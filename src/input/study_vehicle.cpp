#include "input/study_vehicle.h"

#include "input/axis_words.h"
#include "input/study_section.h"

#include <Eigen/Geometry>

namespace glim {

namespace {

const std::vector<std::string> load_states = {"unladen", "curb", "design"};

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

/// The plane through both points, level across the vehicle.
std::optional<Ground> ground_below(TableReader& axles, const std::optional<Vehicle>& vehicle)
{
    axles.demand("front", "write front = [x, y, z], a point of the ground below the front axle");
    axles.demand("rear", "write rear = [x, y, z], a point of the ground below the rear axle");
    const std::optional<Vector> front = axles.vector("front");
    const std::optional<Vector> rear = axles.vector("rear");
    finish_section(axles, "ground.axles");
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

std::optional<Ground> read_plane(TableReader& table, const std::optional<Vehicle>& vehicle)
{
    const std::optional<Length> height = table.length("height");
    std::optional<TableReader> axles = table.table("axles", "`axles` of [ground]");
    if (table.has("height") == table.has("axles"))
        table.complain("axles",
                       table.has("axles") ? "[ground] has both `height` and `axles`"
                                          : "[ground] does not say where the ground is",
                       "write either height = (mm along the axis that points up) or axles = "
                       "{ front = [x, y, z], rear = [x, y, z] }");
    if (axles)
        return ground_below(*axles, vehicle);
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

std::optional<GroundState> read_ground(TableReader& study, const std::optional<Vehicle>& vehicle)
{
    study.demand("ground", "add [ground] with its state and its height or axles");
    std::optional<TableReader> table = study.table("ground", "[ground]");
    if (!table)
        return std::nullopt;
    table->demand("state",
                  "rules differ in the state of load; write " + quoted_choice(load_states));
    const std::optional<std::size_t> state = table->choice("state", load_states);
    const std::optional<Ground> ground = read_plane(*table, vehicle);
    finish_section(*table, "ground");
    if (!ground || !state)
        return std::nullopt;
    return GroundState{load_states[*state], *ground};
}

} // namespace glim
