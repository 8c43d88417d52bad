#include "input/study_moved_parts.h"

#include "input/name_book.h"
#include "input/study_names.h"
#include "input/study_section.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

std::optional<Placement> read_turn(TableReader& table)
{
    const double turn = table.number("turn", "deg").value_or(0);
    const std::optional<Vector> about = table.vector("about");
    const std::optional<Vector> axis = table.vector("axis");
    const bool names_hinge = table.has("about") || table.has("axis");
    if (!table.has("turn")) {
        if (names_hinge)
            table.complaints().add(table.place(),
                                   table.words() + " has a hinge line, but does not turn",
                                   "write turn = (degrees, right-handed about `axis`)");
        return Placement();
    }
    if (std::abs(turn) > 360)
        table.complain("turn", "`turn` of " + table.words() + " is more than once around",
                       "write degrees from -360 to 360");
    if (!table.has("about") || !table.has("axis"))
        table.complaints().add(table.place(), table.words() + " turns about no line",
                               "write about = [x, y, z], a point of its hinge line, and axis = "
                               "[x, y, z], the direction of that line");
    if (!about || !axis)
        return std::nullopt;
    if (axis->norm() < 1e-9) {
        table.complain("axis", "`axis` of " + table.words() + " has no direction",
                       "write the direction of the hinge line, such as [0, 1, 0]");
        return std::nullopt;
    }
    return Placement::turn(*about, Direction::along(*axis), degrees(turn));
}

PartPosition read_position(TableReader& table, bool may_stay, NameBook& names)
{
    PartPosition position;
    position.name = names.read_name(table);
    const std::optional<Placement> turn = read_turn(table);
    const Vector shift = table.vector("shift").value_or(Vector::Zero());
    if (turn)
        position.move = Placement::shift(shift) * *turn;
    if (!may_stay && !table.has("turn") && !table.has("shift"))
        table.complaints().add(table.place(), table.words() + " is where the part is drawn",
                               "write `turn` with `about` and `axis`, or `shift`, or both");
    finish_section(table, "moved_part.position");
    return position;
}

/// Lit faces and what is fixed to a lamp do not move against it.
void complain_of_lamps(TableReader& table, const Study& study, const MovedPart& part)
{
    for (const SurfaceId id : part.surfaces) {
        const Surface& surface = study.surfaces[id];
        if (surface.role == Role::emitting || surface.moves_with)
            table.complain("surfaces",
                           "surface `" + surface.name + "` is part of a lamp, which would move too",
                           "name surfaces that move against the lamps; a lamp that moves with a "
                           "part needs a study of its own for each position");
        if (surface.role == Role::clear)
            table.complain("surfaces",
                           "surface `" + surface.name + "` is clear: it is never in the way",
                           "take it away here, or correct its role");
    }
}

MovedPart read_moved_part(TableReader& table, const Study& study, NameBook& names)
{
    MovedPart part;
    part.name = names.read_name(table);
    table.demand("surfaces", "name the surfaces that move with it");
    part.surfaces = read_surfaces_named(table, "surfaces", study);
    if (table.holds_empty_list("surfaces"))
        table.complain("surfaces", table.words() + " has no surfaces",
                       "name the surfaces that move with it");
    complain_of_lamps(table, study, part);
    const bool may_stay =
        std::any_of(part.surfaces.begin(), part.surfaces.end(),
                    [&](SurfaceId id) { return study.surfaces[id].role == Role::ignored; });
    table.demand("position", "write the fixed positions that it can be in, such as position = [{ "
                             "name = \"open\", turn = 50, about = [x, y, z], axis = [0, 1, 0] }]");
    if (table.holds_empty_list("position"))
        table.complain("position", table.words() + " has no position",
                       "write one that it can be in besides the one drawn");
    NameBook positions("moved_part.position");
    for (TableReader& position : table.tables("position", "`position` of " + table.words()))
        part.positions.push_back(read_position(position, may_stay, positions));
    finish_section(table, "moved_part");
    return part;
}

} // namespace

std::vector<MovedPart> read_moved_parts(TableReader& top, const Study& study)
{
    std::vector<MovedPart> parts;
    NameBook names("moved_part");
    for (TableReader& table : top.tables("moved_part", "[[moved_part]]"))
        parts.push_back(read_moved_part(table, study, names));
    return parts;
}

} // namespace glim
