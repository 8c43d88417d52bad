#pragma once

#include "model/study_keys.h"

namespace glim {

// The keys of the study file, room by room; study_keys() puts them together.

std::span<const StudyKey>
keys_of_what_is_drawn(); ///< what there is: vehicle, ground, meshes, surfaces
std::span<const StudyKey> keys_of_what_is_asked(); ///< lamps, checks, and how finely to look
std::span<const StudyKey> keys_of_what_varies();   ///< tolerances, states, parts that move
std::span<const StudyKey> keys_of_remedies(); ///< what remedies are to keep to, and what they cost

} // namespace glim
