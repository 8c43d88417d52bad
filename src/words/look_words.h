#pragma once

#include "judgement/findings.h"
#include "words/bearing_words.h"

namespace glim {

/// What results call a lamp: "indicator", and "indicator (mirrored)" for its twin.
std::string label_of(const LampLook& look);

/// What results call a surface in the way of the look's lamp: "nose", and for its mirror image
/// "nose (far side)", or "nose (mirrored)" where the lamp is a twin itself.
std::string surface_label(const std::string& surface, bool twin, const LampLook& look);

/// What was in the way of it: "everything", "everything but what was approved with it".
std::string_view words_of(Obstacles obstacles);

/// Whether the best area toward that direction is computed without sampling.
bool is_exact(const LampLook& look, std::size_t at);

/// How far `visible(at)` may be off: the rounding of an exact area, else the expected error.
Area uncertainty(const LampLook& look, std::size_t at);

inline BearingSpeech speech_of(const LampLook& look) { return {look.axis, look.side}; }

/// The place in the look of the verdict's worst direction. Requires: it has areas.
std::size_t worst_at(const LampVerdict& verdict);

/// A row that does not apply has looked nowhere.
inline bool applies(const LampVerdict& verdict)
{
    return verdict.outcome != Outcome::not_applicable;
}
/// Whether it was judged by looking in directions: only then there are areas.
inline bool has_areas(const LampVerdict& verdict) { return !verdict.directions.empty(); }

} // namespace glim
