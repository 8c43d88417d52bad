#include "input/study_keep_clear.h"

#include "input/read_box.h"
#include "input/study_names.h"
#include "input/study_section.h"

#include <cmath>

namespace glim {

namespace {

/// A finer mesh has more triangles than a surfacing program wants to load; a coarser one is no
/// guide at all.
constexpr Length finest_chord = millimetres(0.05);
constexpr Length coarsest_chord = millimetres(20);
constexpr Angle finest_part = degrees(1);
constexpr Angle coarsest_part = degrees(45);
/// A plane that leans more than this is not meant to be upright.
constexpr double most_lean = 1e-3;

std::optional<ReachPlane> read_plane(TableReader& keep_clear, const Vehicle& vehicle)
{
    std::optional<TableReader> table = keep_clear.table("plane", "`plane` of [keep_clear]");
    if (!table)
        return std::nullopt;
    table->demand("point", "write point = [x, y, z], a point of the plane");
    table->demand("normal", "write normal = [x, y, z], the way the lamp looks through it");
    const std::optional<Vector> point = table->vector("point");
    const std::optional<Vector> normal = table->vector("normal");
    finish_section(*table, "keep_clear.plane");
    if (!point || !normal)
        return std::nullopt;
    if (normal->norm() > 0 && std::abs(vehicle.up.dot(*normal)) <= most_lean * normal->norm())
        return ReachPlane{*point, Direction::along(*normal)};
    table->complain("normal", "`normal` of the plane of [keep_clear] is not level",
                    "write a direction of the ground, such as the vehicle's forward axis");
    return std::nullopt;
}

void read_reach(TableReader& table, const Vehicle& vehicle, KeepClearWish& wish)
{
    wish.box = read_box(table, "keep_clear.box");
    wish.plane = read_plane(table, vehicle);
    if (table.has("box") && table.has("plane"))
        table.complain("plane", "[keep_clear] has a `box` and a `plane`",
                       "keep the one at which the space is to end");
}

void read_figures(TableReader& table, KeepClearWish& wish)
{
    wish.chord_error = table.length("chord_error").value_or(wish.chord_error);
    if (wish.chord_error < finest_chord || wish.chord_error > coarsest_chord)
        table.complain("chord_error", "`chord_error` of [keep_clear] is not between 0.05 and 20 mm",
                       "write how far the mesh may lie outside the space, such as 2");
    wish.part_step = table.angle("part_step").value_or(wish.part_step);
    if (wish.part_step < finest_part || wish.part_step > coarsest_part)
        table.complain("part_step", "`part_step` of [keep_clear] is not between 1 and 45 degrees",
                       "write every how many degrees the part kept in view is chosen, such as 5");
}

} // namespace

KeepClearWish read_keep_clear(TableReader& top, const Study& study)
{
    KeepClearWish wish;
    std::optional<TableReader> table = top.table("keep_clear", "[keep_clear]");
    if (!table)
        return wish;
    wish.checks = read_checks_named(*table, "checks", study);
    read_reach(*table, study.vehicle, wish);
    read_figures(*table, wish);
    if (const auto* row = table->row_of("favour", favoured_edge_words, &FavouredEdgeWord::key))
        wish.favour = row->edge;
    finish_section(*table, "keep_clear");
    return wish;
}

} // namespace glim
