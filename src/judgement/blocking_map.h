#pragma once

#include "judgement/session.h"

namespace glim {

/// Which surface takes most in each direction of a verdict.
struct BlockingMap {
    struct Surface {
        std::string name;
        bool twin = false; ///< the mirror image, on the far side
    };
    /// Those that take most somewhere; first the one that does in most directions.
    std::vector<Surface> surfaces;
    /// Place in `surfaces`, one a direction of the verdict; none where less than `least_mapped` is
    /// hidden.
    std::vector<std::optional<std::size_t>> most;
};

/// Less than this is no surface in the way that a map need show.
inline constexpr Area least_mapped = square_millimetres(0.5);

/// Asks anew who is in the way, with about two thousand rays a direction and lamp: where so few
/// meet nobody, with as many as the study's `feature` needs. `look`, `verdict` come from a check of
/// `session`. Parts approved with the lamp count like any other. Throws Stopped.
BlockingMap blocking_map(const Session& session, const LampLook& look, const LampVerdict& verdict,
                         const Workers& workers);

} // namespace glim
