#pragma once

#include "judgement/outcome.h"
#include "model/study.h"
#include "visibility/exact_area.h"
#include "visibility/seen_area.h"

namespace glim {

// Everything that was found out, as plain values without pointers: what `report` writes.

/// One lamp, looked at in every direction that any row asks of it.
struct LampLook {
    std::string name; ///< the lamp's, or "a + b" for lamps taken together
    LampFunction function = LampFunction::front_indicator;
    Side side = Side::left;     ///< where it stands; for a twin, the other side
    bool twin = false;          ///< the mirror image of the drawn lamp
    bool twin_is_alike = false; ///< the scene is symmetric: this stands for the mirror image too
    ReferenceAxis axis = ReferenceAxis::forward;
    LampFrame frame;              ///< vehicle frame
    Point centre = Point::Zero(); ///< centre of reference, vehicle frame
    bool centre_assumed = true;   ///< the area centroid of the lit face, for want of a declared one
    Length axis_height;           ///< of the centre above the ground of the study's state
    Area lit_face;                ///< area of the lit surface itself, not projected

    std::vector<Bearing> toward;                 ///< by V, then H
    std::vector<SeenArea> seen;                  ///< one a direction
    std::vector<std::optional<ExactArea>> exact; ///< one a direction, where it was asked

    /// The best figure known: exact where asked, else sampled.
    Area visible(std::size_t at) const { return exact[at] ? exact[at]->visible : seen[at].visible; }
    Area low(std::size_t at) const;
    Area high(std::size_t at) const;
};

struct DirectionVerdict {
    std::size_t at = 0; ///< place in the look
    SolidAngle weight;
    Outcome outcome = Outcome::undecided;
};

/// How much of the field passes, counted both ways: grid nodes are dense towards the poles.
struct Coverage {
    std::size_t directions_met = 0, directions = 0;
    SolidAngle solid_angle_met, solid_angle; ///< both 0 where the field is a line or a point
};

/// Neighbouring directions that fail or are undecided: where an added lamp would be needed.
struct UncoveredRange {
    Angle h_least, h_most, v_least, v_most; ///< the rectangle around them
    std::size_t directions = 0;
    SolidAngle solid_angle;
    Area least_visible;
};

/// A surface in the way. `alone`: removing it frees so much; `jointly`: others are in the way too.
struct Blocker {
    std::string surface;
    bool twin = false; ///< the mirror image, on the far side
    Area alone_at_worst, jointly_at_worst;
    Area mean_alone, mean_jointly; ///< over the directions that fail; 0 where none does
    Area taken_at_worst() const { return alone_at_worst + jointly_at_worst; }
    Area taken_on_mean() const { return mean_alone + mean_jointly; }
};

/// One lamp under one row.
struct LampVerdict {
    std::size_t look = 0; ///< place in Findings::looks
    Outcome outcome = Outcome::undecided;
    Because because = Because::of_the_figures;
    Field field;                           ///< as it applied, relaxations included
    std::optional<std::size_t> relaxation; ///< place in the row's, where one applied
    Area needed;
    std::vector<DirectionVerdict> directions; ///< empty where not applicable
    std::size_t worst = 0; ///< place in `directions`: the least visible area, exactly known
    Area least_visible;
    Area margin; ///< least_visible - needed
    Coverage coverage;
    std::vector<UncoveredRange> uncovered; ///< largest first
    std::vector<Blocker> blockers; ///< by what they take in failing directions, then at worst
};

struct RowFindings {
    RuleRow row;                         ///< the figures and where they come from
    std::vector<LampVerdict> lamps;      ///< in the check's order, twins after their lamps
    std::optional<LampVerdict> together; ///< where the row lets lamps answer together
};

/// Which figure decided.
struct Deciding {
    std::size_t row = 0;
    std::size_t lamp = 0; ///< place in RowFindings::lamps, unless together
    bool together = false;
};

struct CheckFindings {
    std::string name;
    std::string table, regulation, edition;
    std::string rule, rule_title;
    Outcome outcome = Outcome::undecided;
    std::vector<RowFindings> rows;
    std::optional<Deciding> deciding; ///< none where nothing applies

    const RowFindings& deciding_row() const { return rows[deciding->row]; }
    const LampVerdict& deciding_verdict() const;
};

struct Findings {
    std::string study_file, title;
    Sampling sampling;
    std::vector<LampLook> looks;
    std::vector<CheckFindings> checks;
};

} // namespace glim
