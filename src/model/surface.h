#pragma once

#include "geometry/direction.h"
#include "geometry/slot.h"
#include "geometry/triangle_mesh.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace glim {

using SurfaceId = SlotId<struct SurfaceKind>;
using LampId = SlotId<struct LampKind>;

/// What a surface does to light. `emitting` blocks too: with its back, and before other lamps.
/// `reflex`, a reflex reflector, never emits and blocks like `opaque`.
enum class Role { emitting, opaque, clear, reflex, ignored };

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

/// How a surface may be pushed in, so that a lamp behind it is seen over it.
struct Reshape {
    /// Which way, vehicle frame; else against the mean of its facets' normals. Its twin goes the
    /// mirrored way.
    std::optional<Direction> push = {};
    bool all_edges_fixed = false;         ///< its rim stays where it is
    std::vector<Box> edges_fixed_in = {}; ///< else the rim stays inside these, vehicle frame
};

struct Surface {
    std::string name;
    Role role = Role::opaque;
    MirrorRule mirror = MirrorRule::no;
    TriangleMesh mesh;             ///< vehicle frame, mm
    std::vector<LampId> clear_for; ///< lamps that this surface never blocks
    Chord chord = {};
    /// Given for the trimmed part of an emitting surface, which one lamp shines from: the whole
    /// surface stands in the way, and this part, being in the same place, does not.
    std::optional<SurfaceId> lit_part_of = {};
    /// A part of this lamp's unit, such as its bezel: it moves where the lamp is moved.
    std::optional<LampId> moves_with = {};
    std::optional<Reshape> reshape = {}; ///< given for a surface that may be reshaped

    /// Whether it stands in the way at all; some lamps may be spared by `clear_for`.
    bool blocks() const { return !lit_part_of && role != Role::clear && role != Role::ignored; }
};

struct RoleWord {
    Role role;
    std::string_view word;
};
inline constexpr std::array role_words = {
    RoleWord{Role::emitting, "emitting"}, RoleWord{Role::opaque, "opaque"},
    RoleWord{Role::clear, "clear"},       RoleWord{Role::reflex, "reflex"},
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
