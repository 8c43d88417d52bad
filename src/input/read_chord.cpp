#include "input/read_chord.h"

#include "geometry/chord_error.h"

namespace glim {

std::optional<Length> read_chord(TableReader& table)
{
    const std::optional<Length> chord = table.length("chord");
    if (!chord || *chord >= millimetres(0))
        return chord;
    table.complain("chord", "`chord` of " + table.words() + " is below 0",
                   "write how far the mesh may lie from its surface, or take the key away");
    return std::nullopt;
}

Chord chord_of(const TriangleMesh& mesh, const std::optional<Length>& given)
{
    return given ? Chord{*given, false} : Chord{chord_error(mesh), true};
}

} // namespace glim
