#include "input/read_selection.h"

#include "input/study_section.h"

namespace glim {

namespace {

std::optional<Box> read_box(TableReader& select)
{
    std::optional<TableReader> box = select.table("box", "`box` of " + select.words());
    if (!box)
        return std::nullopt;
    box->demand("least", "write least = [x, y, z], the corner with the least coordinates");
    box->demand("most", "write most = [x, y, z], the corner with the greatest coordinates");
    const std::optional<Vector> least = box->vector("least");
    const std::optional<Vector> most = box->vector("most");
    finish_section(*box, "surface.select.box");
    if (!least || !most)
        return std::nullopt;
    if ((least->array() > most->array()).any()) {
        box->complain("least", "`least` exceeds `most` in " + box->words(),
                      "write the lesser coordinate of each axis in `least`");
        return std::nullopt;
    }
    return Box{*least, *most};
}

std::optional<Vector> read_facing(TableReader& select)
{
    std::optional<Vector> facing = select.vector("facing");
    if (facing && facing->norm() == 0) {
        select.complain("facing", "`facing` of " + select.words() + " has no length",
                        "write a direction, such as [-1, 0, 0]");
        return std::nullopt;
    }
    return facing;
}

} // namespace

Selection read_selection(TableReader& surface)
{
    std::optional<TableReader> select = surface.table("select", "`select` of " + surface.words());
    if (!select)
        return {};
    Selection selection;
    selection.objects = select->texts("object");
    selection.groups = select->texts("group");
    selection.materials = select->texts("material");
    if (const std::optional<std::size_t> side = select->choice("side", {"left", "right"}))
        selection.side = *side == 0 ? Side::left : Side::right;
    selection.box = read_box(*select);
    selection.facing = read_facing(*select);
    selection.component_at = select->vector("component_at");
    finish_section(*select, "surface.select");
    return selection;
}

} // namespace glim
