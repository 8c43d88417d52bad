#pragma once

#include "model/lamp.h"
#include "model/light_table.h"
#include "units/units.h"

#include <string>
#include <variant>
#include <vector>

namespace glim {

// What a row of a rule asks. Six kinds look in every direction of the row's field, three of them
// for light; the others measure where the lamp stands.

/// At least this much visible area, in every direction of the field.
struct LeastArea {
    Area area;
    /// Whether the photometric proof stays due where the area is met but a part is hidden.
    bool proof_if_hidden = false;
};

/// In every direction of the field the lamp shows some of its apparent surface, and nothing that
/// was not there at its approval hides any part of it.
struct NoObstacle {};

/// In every direction of the field at most this share of the apparent surface is hidden.
struct MostHidden {
    double share = 0; ///< 0.5 is half
};

/// At least this much light, in every direction of the field. Needs photometric data.
struct LeastIntensity {
    Intensity least;
};

/// At most this much light, in every direction of the field. Needs photometric data. Hiding never
/// adds light, so the whole lamp's own intensity is what counts.
struct MostIntensity {
    Intensity most;
};

/// Four heights that rules tell apart.
enum class HeightOf {
    apparent_surface, ///< its lowest and its highest point, seen along the reference axis
    h_plane,          ///< the horizontal plane through the *declared* centre of reference
    lamp_centre,      ///< the centre of the lit surface
    reference_axis,   ///< the axis of reference, at the centre of reference
};

/// Above the ground. `unless_unavoidable` widens `at_most` where the shape of the bodywork leaves
/// no other place, which somebody has to show.
struct HeightLimits {
    HeightOf of = HeightOf::apparent_surface;
    std::optional<Length> at_least = {};
    std::optional<Length> at_most = {};
    std::optional<Length> unless_unavoidable = {};
};

/// From the outermost point of the apparent surface to the vehicle's extreme outer edge.
struct ToOuterEdge {
    Length at_most;
};

/// Between the inner edges of the apparent surfaces of the two lamps of a pair.
struct BetweenInnerEdges {
    Length at_least;
};

enum class GapFrom { edge, centroid };

/// What follows from a gap of this or more.
struct GapStep {
    Length at_least;
    std::string follows; ///< a category ("1a") or a multiplier ("1.5")
};

/// The distance to the nearest lamp of certain functions, projected on the transverse vertical
/// plane: from edge to edge of the apparent surfaces, or from this lamp's centroid to the edge.
struct GapToLamp {
    std::vector<LampFunction> to;
    GapFrom from = GapFrom::edge;
    /// Widest first. The first that the gap reaches tells what follows; where `is_category`, the
    /// lamp's declared category must be one that the gap allows.
    std::vector<GapStep> steps;
    bool is_category = true;
};

/// The reference axis is parallel to the ground within this.
struct LevelAxis {
    Angle within;
};

/// Lit parts count as one lamp where they fill this share of the smallest quadrilateral around
/// them, seen along the axis, or where no gap between facing edges is wider.
struct OneLamp {
    double share = 0; ///< 0.6 is sixty percent
    Length widest_gap;
};

/// A closed choice: further criteria are further alternatives here.
using Criterion =
    std::variant<LeastArea, NoObstacle, MostHidden, LeastIntensity, HeightLimits, ToOuterEdge,
                 BetweenInnerEdges, GapToLamp, LevelAxis, OneLamp, MostIntensity, LightTable>;

/// Whether the criterion asks for a field of directions; the others ask where the lamp stands.
bool asks_directions(const Criterion& criterion);
/// Whether it asks for light in those directions.
bool asks_light(const Criterion& criterion);

/// The criterion's word in tables and results, in the order of the alternatives.
inline constexpr std::array criterion_keys = {
    std::string_view{"least_area"},
    std::string_view{"no_obstacle"},
    std::string_view{"most_hidden"},
    std::string_view{"least_intensity"},
    std::string_view{"height"},
    std::string_view{"to_outer_edge"},
    std::string_view{"between_inner_edges"},
    std::string_view{"gap"},
    std::string_view{"level_axis"},
    std::string_view{"one_lamp"},
    std::string_view{"most_intensity"},
    std::string_view{"point_table"},
};
static_assert(criterion_keys.size() == std::variant_size_v<Criterion>);

struct HeightOfWord {
    HeightOf of;
    std::string_view key;
    std::string_view words;
};
inline constexpr std::array height_of_words = {
    HeightOfWord{HeightOf::apparent_surface, "apparent_surface",
                 "lowest and highest point of the apparent surface"},
    HeightOfWord{HeightOf::h_plane, "h_plane",
                 "horizontal plane through the declared centre of reference"},
    HeightOfWord{HeightOf::lamp_centre, "lamp_centre", "centre of the lamp"},
    HeightOfWord{HeightOf::reference_axis, "reference_axis", "axis of reference"},
};

} // namespace glim
