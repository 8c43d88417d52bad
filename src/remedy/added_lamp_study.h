#pragma once

#include "model/study.h"

namespace glim {

/// Who answers the checks that an added lamp is for.
enum class WhoAnswers {
    added_alone,  ///< the added lamp is the only one asked
    beside_others ///< it is asked beside the check's own lamps
};

/// A study with one lamp more.
struct StudyWithLamp {
    Study study;
    LampId lamp;
    SurfaceId lens; ///< its lit surface
};

/// A lens for an added lamp, as it would lie on its carrier.
struct AddedLens {
    TriangleMesh mesh; ///< vehicle frame
    SurfaceId carrier;
};

/// The added lamp as the study's own lamps make it: the function asked for, else that of the lamp
/// it helps; of the same function also its category and its axis; on the same side, and one of a
/// pair where that one is. No surfaces yet.
Lamp lamp_to_add(const Study& study, const AddLampTask& task, LampId helped);

/// Adds the lamp and asks it, under `who`, in the checks of these places.
StudyWithLamp with_added_lamp(const Study& study, const Lamp& lamp, const AddedLens& lens,
                              std::span<const std::size_t> checks, WhoAnswers who);

/// A name that nothing of the kind has yet: `wish`, or `wish 2` ...
std::string free_lamp_name(const Study& study, const std::string& wish);
std::string free_surface_name(const Study& study, const std::string& wish);

} // namespace glim
