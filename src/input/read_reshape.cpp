#include "input/read_reshape.h"

#include "input/read_box.h"

namespace glim {

namespace {

std::optional<Direction> read_push(TableReader& surface)
{
    const std::optional<Vector> push = surface.vector("push");
    if (!push)
        return std::nullopt;
    if (push->norm() > 0)
        return Direction::along(*push);
    surface.complain("push", "`push` of " + surface.words() + " has no length",
                     "write a direction, such as [0, 0, -1], or take the key away");
    return std::nullopt;
}

void read_fixed_edges(TableReader& surface, Reshape& reshape)
{
    if (!surface.holds_text("fixed_edges")) {
        reshape.edges_fixed_in = read_boxes(surface, "fixed_edges", "surface.fixed_edges");
        return;
    }
    const std::optional<std::size_t> word = surface.choice("fixed_edges", {"all", "none"});
    reshape.all_edges_fixed = word && *word == 0;
}

void check_role(TableReader& surface, Role role)
{
    const std::string who = surface.words();
    if (role == Role::emitting)
        surface.complain("reshapeable", who + " emits: to reshape a lens is to make another lamp",
                         "take `reshapeable` away, or mark what stands before the lens");
    if (role == Role::clear || role == Role::ignored)
        surface.complain("reshapeable", who + " is never in the way: no relief would change it",
                         "take `reshapeable` away, or correct `role`");
}

} // namespace

std::optional<Reshape> read_reshape(TableReader& surface, Role role)
{
    const std::optional<bool> reshapeable = surface.truth("reshapeable");
    Reshape reshape;
    reshape.push = read_push(surface);
    read_fixed_edges(surface, reshape);
    if (reshapeable.value_or(false)) {
        check_role(surface, role);
        return reshape;
    }
    // A study laid over another says false where the other says true, and leaves its keys alone.
    for (const char* key : {"push", "fixed_edges"})
        if (!reshapeable && surface.has(key))
            surface.complain(key,
                             "`" + std::string(key) + "` of " + surface.words() +
                                 " says nothing of a surface that is not reshapeable",
                             "write reshapeable = true beside it, or take it away");
    return std::nullopt;
}

} // namespace glim
