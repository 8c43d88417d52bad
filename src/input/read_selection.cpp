#include "input/read_selection.h"

#include "input/read_box.h"
#include "input/study_section.h"

namespace glim {

namespace {

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
    selection.box = read_box(*select, "surface.select.box");
    selection.facing = read_facing(*select);
    selection.component_at = select->vector("component_at");
    finish_section(*select, "surface.select");
    return selection;
}

} // namespace glim
