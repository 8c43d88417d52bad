#pragma once

#include "judgement/session.h"
#include "machine/new_folder.h"

namespace glim {

/// How far apart the directions of a written distribution are: as closely as signal lamps are
/// measured.
inline constexpr Angle written_light_step = degrees(2.5);

/// Puts `light/LAMP-AXIS.ies` into the folder for every lamp of the findings that has a photometric
/// file: what is left of its light on the vehicle, as LM-63-2002 of type A, with notes that say
/// that it is an estimate and what it stands on. Intensities have four significant digits; watts
/// and opening are the source's. Lamps of several axes are written once for each. Gives how many
/// files that were. `findings` come from `session`. Throws Stopped.
std::size_t put_obstructed_light(const Session& session, const Findings& findings,
                                 NewFolder& folder, const Workers& workers);

} // namespace glim
