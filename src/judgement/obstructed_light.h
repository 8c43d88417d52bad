#pragma once

#include "judgement/session.h"

namespace glim {

/// A lamp's distribution as it is left on the vehicle, on the goniometer of signal lamps.
struct ObstructedLight {
    std::string lamp; ///< as its look is named
    bool twin = false;
    IntensityGrid grid; ///< of type a, H counted to the right of one who looks out from the lamp
    std::vector<std::string> files; ///< what it stands on
    std::size_t brightness = 0;     ///< place in brightness_words
};

/// What is left of a lamp's light: the file's intensity times the share in view, weighed by
/// brightness, at every `step` from the reference axis out to 90 degrees or as far as the file
/// reaches. An estimate wherever a part is hidden. Nothing where the lamp has no photometric file.
/// `look` comes from a check of `session` and is of one lamp. Throws Stopped.
std::optional<ObstructedLight> obstructed_light(const Session& session, const LampLook& look,
                                                Angle step, const Workers& workers);

} // namespace glim
