#pragma once

#include "input/table_reader.h"
#include "model/surface.h"

namespace glim {

/// Reads the key `chord` of a mesh or surface; a negative one is a complaint.
std::optional<Length> read_chord(TableReader& table);

/// What is given, else an estimate from the facets. Requires: points welded.
Chord chord_of(const TriangleMesh& mesh, const std::optional<Length>& given);

} // namespace glim
