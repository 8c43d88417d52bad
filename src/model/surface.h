#pragma once

#include "geometry/slot.h"
#include "geometry/triangle_mesh.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace glim {

using SurfaceId = SlotId<struct SurfaceKind>;
using LampId = SlotId<struct LampKind>;

/// What a surface does to light. `emitting` blocks too: with its back, and before other lamps.
enum class Role { emitting, opaque, clear, ignored };

/// Whether a half model's surface has a twin across the median plane.
enum class MirrorRule {
    yes,      ///< a twin is added, winding reversed
    no,       ///< exists once, where it is drawn (a tow-eye cover, an emblem)
    straddles ///< drawn whole across the median plane; used as drawn
};

/// How far a mesh may lie from the surface that it stands for.
struct Chord {
    Length error;
    bool estimated = true; ///< from the facets themselves; else as the study gives it
};

struct Surface {
    std::string name;
    Role role = Role::opaque;
    MirrorRule mirror = MirrorRule::no;
    TriangleMesh mesh;             ///< vehicle frame, mm
    std::vector<LampId> clear_for; ///< lamps that this surface never blocks
    Chord chord = {};
};

struct RoleWord {
    Role role;
    std::string_view word;
};
inline constexpr std::array role_words = {
    RoleWord{Role::emitting, "emitting"},
    RoleWord{Role::opaque, "opaque"},
    RoleWord{Role::clear, "clear"},
    RoleWord{Role::ignored, "ignored"},
};

struct MirrorWord {
    MirrorRule rule;
    std::string_view word;
};
inline constexpr std::array mirror_words = {
    MirrorWord{MirrorRule::yes, "yes"},
    MirrorWord{MirrorRule::no, "no"},
    MirrorWord{MirrorRule::straddles, "straddles"},
};

} // namespace glim
