#pragma once

#include "model/lamp_sketch.h"
#include "remedy/keep_clear.h"
#include "remedy/place_room.h"

namespace glim {

enum class SightView {
    plan,  ///< across: y, mm from the median plane, outboard +; up: x, mm ahead of the lens
    side,  ///< across: x; up: z, mm above the ground
    front, ///< across: y; up: z
};
struct SightViewWord {
    SightView view;
    std::string_view key, title;
};
inline constexpr std::array sight_view_words = {
    SightViewWord{SightView::plan, "plan", "Plan view"},
    SightViewWord{SightView::side, "side", "Side view"},
    SightViewWord{SightView::front, "front", "Front view"},
};

/// Where the space begins that has to stay empty, in one view.
struct LimitCurve {
    std::size_t row = 0; ///< place in SightLines::rows
    SightView view = SightView::plan;
    std::string label; ///< "no body inside", "y = 350", "600 ahead"
    std::vector<Point2> points;
    bool closed = false;
};

/// How far ahead of the lens's centre a body may reach at one place across the vehicle, at the
/// heights of the lens.
struct NoseReach {
    Length lateral;              ///< y: below 0 beyond the median plane
    std::optional<Length> ahead; ///< none where the space is not met within the drawing
};

/// What one row leaves open.
struct SightRow {
    RuleRow row;
    Field field; ///< as it applies
    bool relaxed = false;
    std::optional<FavouredEdge> kept; ///< of a row of area: which part of the lens is kept in view
    Area needed;                      ///< rows of area
    Bearing worst;                    ///< the corner in which the lens shows least
    Area least_shown;                 ///< there, of the whole lens
    /// Rows of area: the lens would be large enough with this face, its shape kept; none where it
    /// turns away from a corner of the field.
    std::optional<Area> least_face;
    std::vector<NoseReach> nose; ///< none of rows in single directions
    bool spared = false; ///< the rule may be met in another way, for which the lens is large enough

    /// With nothing in the way the lens shows less than is needed.
    bool lens_too_small() const { return is_too_small(least_shown, needed); }
};

/// A row that may ask for a space, but hangs on what the sketch does not say.
struct RowLeftOpen {
    std::string row;
    Measured hangs_on = Measured::vehicle_category;
};

struct SightLines {
    std::vector<SightRow> rows;
    std::vector<LimitCurve> curves;
    std::vector<PlaceRoom> places;
    Area face;              ///< of the lens
    std::size_t facets = 0; ///< of the lens
    Box lens;               ///< in the sketch's frame
    Length chord_error;     ///< of curves through round parts
    std::vector<std::string> without_space;
    std::vector<RowLeftOpen> left_open;
    std::vector<WaysOfRule> choices; ///< where one way of several is enough

    /// The lens is large enough for every row that is not spared, and stands where it may.
    bool kept() const;
};

/// The limits that a rule sets to a body that is still to be drawn. Throws InputError where no row
/// of the rule looks in directions, or where a field has no width; Stopped.
SightLines find_sight_lines(const LampSketch& sketch, const Workers& workers);

} // namespace glim
