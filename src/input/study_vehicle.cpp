#include "input/study_vehicle.h"

#include "input/axis_words.h"
#include "input/load_states.h"
#include "input/read_ground.h"
#include "input/study_section.h"

namespace glim {

namespace {

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
            if (const std::optional<Ground> ground = read_ground_of(*state, vehicle))
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
