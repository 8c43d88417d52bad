#pragma once

#include "geometry/direction.h"
#include "geometry/trim.h"
#include "model/surface.h"

#include <optional>

namespace glim {

/// As seated in the vehicle.
enum class Side { left, right, median };

/// One lamp is one function: a lens shared by indicator and position lamp is two lamps.
enum class LampFunction {
    front_indicator,
    rear_indicator,
    side_indicator,
    front_position,
    rear_position,
    stop,
    high_stop,
    daytime_running,
    side_marker,
    end_outline,
    parking,
    front_fog,
    rear_fog,
    reversing,
    cornering,
    dipped_beam,
    main_beam,
};

/// The axis that H and V are counted from.
enum class ReferenceAxis { forward, rearward, outboard };

/// What the lit surfaces of a lamp are, in the regulations' terms.
enum class SurfaceBasis {
    light_emitting, ///< the light-emitting surface: what of the lens passes light
    illuminating,   ///< the illuminating surface: bounded where the light has fallen off
    declared        ///< as the applicant declares it; the study does not say which
};

struct Lamp {
    std::string name;
    LampFunction function = LampFunction::front_indicator;
    std::string category; ///< "1a", "5" ..., as the regulation calls it; may be empty
    Side side = Side::left;
    bool paired = false;                  ///< a mirror image stands on the other side
    bool optional = false;                ///< the regulation does not demand this lamp
    std::vector<SurfaceId> emits;         ///< not empty
    std::vector<SurfaceId> approved_with; ///< was in the way already when the lamp was approved
    std::optional<Direction> axis;        ///< reference axis, vehicle frame; else the rule's own
    std::optional<Point> centre;          ///< centre of reference, vehicle frame; else assumed
    SurfaceBasis surface_basis = SurfaceBasis::declared;
    /// What was cut off the surfaces it emits from; the surfaces in `emits` are what is left.
    std::optional<Trim> trim = {};
};

struct FunctionWord {
    LampFunction function;
    std::string_view key;   ///< in study files and tables
    std::string_view words; ///< for people
};
inline constexpr std::array function_words = {
    FunctionWord{LampFunction::front_indicator, "front_indicator", "front direction indicator"},
    FunctionWord{LampFunction::rear_indicator, "rear_indicator", "rear direction indicator"},
    FunctionWord{LampFunction::side_indicator, "side_indicator", "side direction indicator"},
    FunctionWord{LampFunction::front_position, "front_position", "front position lamp"},
    FunctionWord{LampFunction::rear_position, "rear_position", "rear position lamp"},
    FunctionWord{LampFunction::stop, "stop", "stop lamp"},
    FunctionWord{LampFunction::high_stop, "high_stop", "high stop lamp"},
    FunctionWord{LampFunction::daytime_running, "daytime_running", "daytime running lamp"},
    FunctionWord{LampFunction::side_marker, "side_marker", "side marker lamp"},
    FunctionWord{LampFunction::end_outline, "end_outline", "end-outline marker lamp"},
    FunctionWord{LampFunction::parking, "parking", "parking lamp"},
    FunctionWord{LampFunction::front_fog, "front_fog", "front fog lamp"},
    FunctionWord{LampFunction::rear_fog, "rear_fog", "rear fog lamp"},
    FunctionWord{LampFunction::reversing, "reversing", "reversing lamp"},
    FunctionWord{LampFunction::cornering, "cornering", "cornering lamp"},
    FunctionWord{LampFunction::dipped_beam, "dipped_beam", "dipped-beam headlamp"},
    FunctionWord{LampFunction::main_beam, "main_beam", "main-beam headlamp"},
};

struct SurfaceBasisWord {
    SurfaceBasis basis;
    std::string_view key;
    std::string_view words; ///< for people
};
inline constexpr std::array surface_basis_words = {
    SurfaceBasisWord{SurfaceBasis::light_emitting, "light_emitting", "light-emitting surface"},
    SurfaceBasisWord{SurfaceBasis::illuminating, "illuminating", "illuminating surface"},
    SurfaceBasisWord{SurfaceBasis::declared, "declared", "surface as declared"},
};

struct SideWord {
    Side side;
    std::string_view word;
};
inline constexpr std::array side_words = {
    SideWord{Side::left, "left"},
    SideWord{Side::right, "right"},
    SideWord{Side::median, "median"},
};

struct AxisWord {
    ReferenceAxis axis;
    std::string_view word;
};
inline constexpr std::array axis_words = {
    AxisWord{ReferenceAxis::forward, "forward"},
    AxisWord{ReferenceAxis::rearward, "rearward"},
    AxisWord{ReferenceAxis::outboard, "outboard"},
};

} // namespace glim
