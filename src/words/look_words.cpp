#include "words/look_words.h"

namespace glim {

std::string label_of(const LampLook& look)
{
    return look.twin ? look.name + " (mirrored)" : look.name;
}

std::string surface_label(const std::string& surface, bool twin, const LampLook& look)
{
    if (!twin)
        return surface;
    return surface + (look.twin ? " (mirrored)" : " (far side)");
}

std::string_view words_of(Obstacles obstacles)
{
    switch (obstacles) {
    case Obstacles::without_approved:
        return "everything but what was approved with it";
    case Obstacles::approved_too:
        return "everything, what was approved with it like any other";
    case Obstacles::all:
        break;
    }
    return "everything";
}

bool is_exact(const LampLook& look, std::size_t at) { return look.exact[at].has_value(); }

Area uncertainty(const LampLook& look, std::size_t at)
{
    return look.exact[at] ? look.exact[at]->rounding : look.seen[at].expected_error;
}

std::size_t worst_at(const LampVerdict& verdict) { return verdict.directions[verdict.worst].at; }

} // namespace glim
