#pragma once

#include "model/lamp_sketch.h"

#include <filesystem>

namespace glim {

/// Reads a sketch of a lamp (docs/sight-lines.md): width of the vehicle, place of the lamp, outline
/// of its lens, a rule. Throws InputError with all that is wrong.
LampSketch read_lamp_sketch(const std::filesystem::path& file);

} // namespace glim
