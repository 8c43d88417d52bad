#pragma once

#include "model/study.h"

namespace glim {

/// What moves where a lamp is moved: the surfaces it emits with, trimmed parts with their wholes,
/// and what `moves_with` it. Ascending.
std::vector<SurfaceId> unit_of(const Study& study, LampId lamp);

/// Bodies that move together.
struct MovingBodies {
    std::vector<SurfaceId> surfaces; ///< ascending
    std::vector<LampId> lamps;       ///< every lamp that one of them shines for; ascending
};
/// These surfaces with the units of these lamps; the lit part of a surface goes with it.
MovingBodies moving_bodies(const Study& study, const std::vector<SurfaceId>& surfaces,
                           const std::vector<LampId>& lamps);

} // namespace glim
