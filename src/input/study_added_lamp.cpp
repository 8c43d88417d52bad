#include "input/study_added_lamp.h"

#include "input/read_box.h"
#include "input/study_names.h"
#include "input/study_section.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// A slimmer lens is a line of light, and no patch of a surface.
constexpr double slimmest = 20;
/// So many places are more than anybody compares.
constexpr int most_places = 20;

void read_carriers(TableReader& table, const Study& study, AddLampTask& task)
{
    if (!table.has("carriers") && !table.has("boxes"))
        table.complaints().add(table.place(), table.words() + " does not say where the lamp may go",
                               "write carriers = [\"...\"], the surfaces that may carry it, or "
                               "boxes = [{ least = [x, y, z], most = [x, y, z] }]");
    task.carriers = read_surfaces_named(table, "carriers", study);
    for (const SurfaceId carrier : task.carriers)
        if (!study.surfaces[carrier].blocks() || study.surfaces[carrier].role == Role::emitting)
            table.complain("carriers",
                           "surface `" + study.surfaces[carrier].name +
                               "` cannot carry a lamp: it is lit, clear or ignored",
                           "name surfaces of the body");
    for (TableReader& box : table.tables("boxes", "`boxes` of " + table.words()))
        if (const std::optional<Box> read = read_corners(box, "add_lamp.boxes"))
            task.boxes.push_back(*read);
}

void read_proportion(TableReader& table, AddLampTask& task)
{
    const std::string remedy = "write width to height, from 0.05 to 20, such as 1.5, or \"round\"";
    if (table.holds_text("proportion")) {
        if (table.text("proportion") != "round")
            table.complain("proportion", "`proportion` of " + table.words() + " is no proportion",
                           remedy);
        return;
    }
    task.width_to_height = table.number("proportion", "");
    const double width = task.width_to_height.value_or(1);
    if (width < 1 / slimmest || width > slimmest)
        table.complain("proportion", "`proportion` of " + table.words() + " makes no lens", remedy);
}

void read_wishes(TableReader& table, AddLampTask& task)
{
    read_proportion(table, task);
    task.largest = table.length("largest").value_or(task.largest);
    if (task.largest <= Length())
        table.complain("largest", "`largest` of " + table.words() + " is not above 0",
                       "write how wide the lens may be, mm");
    if (const auto* row = table.row_of("rank", place_rank_words, &PlaceRankWord::key))
        task.rank = row->rank;
    const double places = table.number("places", "").value_or(task.places);
    if (places >= 1 && places <= most_places && places == std::floor(places))
        task.places = static_cast<int>(places);
    else
        table.complain("places", "`places` of " + table.words() + " is no number of places",
                       "write a whole number from 1 to 20");
}

} // namespace

std::optional<AddLampTask> read_add_lamp(TableReader& top, const Study& study)
{
    std::optional<TableReader> table = top.table("add_lamp", "[add_lamp]");
    if (!table)
        return std::nullopt;
    AddLampTask task;
    read_carriers(*table, study, task);
    task.lamp = read_lamp_named(*table, "lamp", study);
    if (const auto* row = table->row_of("function", function_words, &FunctionWord::key))
        task.signal = row->function;
    task.checks = read_checks_named(*table, "checks", study);
    read_wishes(*table, task);
    finish_section(*table, "add_lamp");
    return task;
}

} // namespace glim
