#pragma once

#include "judgement/outcome.h"
#include "model/study.h"
#include "visibility/exact_area.h"
#include "visibility/prepared_scene.h"
#include "visibility/seen_area.h"

namespace glim {

// Everything that was found out, as plain values without pointers: what `report` writes.

/// What photometric files say of a look's lamps in one direction. Transmittances are in it.
struct LightToward {
    /// With nothing in the way that was not there when it was measured; of several lamps the sum.
    /// None outside the measured range of one of the files.
    std::optional<Intensity> whole;
    Intensity left; ///< as sampled: each lamp's own times the weighed share of it that is in view
    bool shows_no_surface = false; ///< a file gives light where its lamp shows no surface
};

struct LookLight {
    std::vector<std::string> files;  ///< one a lamp of the look, as the study writes them
    std::size_t brightness = 0;      ///< place in brightness_words; of several lamps the first's
    double transmittance = 1;        ///< likewise
    std::vector<LightToward> toward; ///< one a direction
};

/// One lamp, looked at in every direction that any row asks of it.
struct LampLook {
    std::string name;                    ///< the lamp's, or "a + b" for lamps taken together
    std::vector<LampStanding> standings; ///< these lamps; their areas add up
    LampFunction function = LampFunction::front_indicator;
    Side side = Side::left;     ///< where it stands; for a twin, the other side
    bool twin = false;          ///< the mirror image of the drawn lamp
    bool twin_is_alike = false; ///< the scene is symmetric: this stands for the mirror image too
    Obstacles obstacles = Obstacles::all;
    ReferenceAxis axis = ReferenceAxis::forward;
    LampFrame frame; ///< vehicle frame
    /// H of the lamp's own reference axis, counted from the axis that the row names: H and V of
    /// everything else count from the lamp's own. 0 where the study gives none.
    Angle axis_turned;
    std::string state;            ///< of load: where the ground is taken
    bool state_stands_in = false; ///< for the rule's own state, which the study does not give
    Point centre = Point::Zero(); ///< centre of reference, vehicle frame
    bool centre_assumed = true;   ///< the area centroid of the lit face, for want of a declared one
    SurfaceBasis surface_basis = SurfaceBasis::declared;
    Length axis_height; ///< of the centre above the ground of the study's state
    Area lit_face;      ///< area of the lit surface itself, not projected

    std::vector<Bearing> toward;                          ///< by V, then H
    std::vector<SeenArea> seen;                           ///< one a direction
    std::vector<std::optional<ExactArea>> exact;          ///< one a direction, where it was asked
    std::vector<std::optional<ExactHidden>> exact_hidden; ///< likewise
    /// One a direction: how far areas may be off because meshes are not the surfaces that they
    /// stand for. An estimate from chord errors; beside the numerical bounds, not in them.
    std::vector<Area> mesh_error;
    std::optional<LookLight> light = {}; ///< none where a lamp of the look has no photometric file

    /// The best figure known: exact where asked, else sampled.
    Area visible(std::size_t at) const { return exact[at] ? exact[at]->visible : seen[at].visible; }
    Area low(std::size_t at) const;
    Area high(std::size_t at) const;
    /// What is hidden by things not approved with the lamp, likewise.
    Area hidden(std::size_t at) const;
    Area hidden_low(std::size_t at) const;
    Area hidden_high(std::size_t at) const;
    /// Hidden only by the lamp itself and by what was approved with it.
    Area approved(std::size_t at) const;
    /// What the file's intensity leaves there; none outside the measured range. An estimate where
    /// something is hidden: see Brightness. Requires: `light`.
    std::optional<Intensity> light_left(std::size_t at) const;
};

struct DirectionVerdict {
    std::size_t at = 0; ///< place in the look
    SolidAngle weight;
    Outcome outcome = Outcome::undecided;
    Because because = Because::of_the_figures;
    /// Between these the truth lies where the outcome is undecided; else both are the outcome.
    Outcome at_worst = Outcome::undecided, at_best = Outcome::undecided;
    bool between = false; ///< no node of the grid: found between them, it weighs nothing
    /// Rows of light, where the proof is due: whether what is left would be enough. An estimate.
    std::optional<bool> would_suffice = {};
};

/// How sure a verdict is of what lies between the directions looked at.
enum class Between {
    not_met_anyway, ///< a direction fails: what lies between cannot mend it
    on_grid,        ///< met in the directions of the grid; nothing is said of those between
    subdivided, ///< looked at more finely wherever the areas could fall to the threshold between
};

/// Where the outcome changes from met to something else, between two neighbours of the grid.
struct Crossing {
    Bearing met, unmet; ///< as near as they were brought together
    Area visible_met, visible_unmet;
    /// Half the way between them, and what the areas' own errors may shift it.
    Angle uncertainty;
};

/// As results spell them.
std::string_view key_of(Between between);
std::string_view key_of(Obstacles obstacles);

enum class FigureUnit { millimetres, degrees, share };

/// "mm", "deg" or "share".
std::string_view key_of(FigureUnit unit);

/// Something measured where a lamp stands, and what the rule holds it against.
struct Measurement {
    std::string what; ///< "lowest point of the apparent surface"
    FigureUnit unit = FigureUnit::millimetres;
    double figure = 0;
    std::optional<double> at_least = {}, at_most = {};
    std::vector<Point> points = {}; ///< vehicle frame: where it is, or the two it lies between
    std::string note = {};          ///< what was assumed; may be empty
    double accuracy = 0; ///< how far the figure may be off because meshes are not the surfaces

    double margin() const; ///< to the nearer limit; negative where it is not kept
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

/// Area that a facet takes, alone or jointly, and how much of that where no other surface stands
/// nearer to the lamp.
struct FacetArea {
    Area taken, first;
};

struct FacetShare {
    std::uint32_t facet = 0; ///< place in the surface's mesh
    FacetArea at_worst;
    std::optional<FacetArea> mean; ///< over the directions that fail; none where none does
    Point centre =
        Point::Zero(); ///< centroid, vehicle frame, where it stands: of a twin the twin's
};

/// A surface in the way. `alone`: removing it frees so much; `jointly`: others are in the way too.
struct Blocker {
    std::string surface;
    bool twin = false; ///< the mirror image, on the far side
    Area alone_at_worst, jointly_at_worst;
    std::optional<Area> mean_alone, mean_jointly; ///< over the directions that fail, if any
    /// By what they take on the mean, else at worst; together they take what the surface takes.
    std::vector<FacetShare> facets;
    Box patch; ///< about the first of them that take 99 %; vehicle frame, where the surface stands

    Area taken_at_worst() const { return alone_at_worst + jointly_at_worst; }
    std::optional<Area> taken_on_mean() const
    {
        return mean_alone ? std::optional(*mean_alone + *mean_jointly) : std::nullopt;
    }
};

/// By what least intensities are multiplied: one number where the gap that gives it is known.
struct Multiplier {
    double least = 1, most = 1;
};

/// A group of a table of light, added up over the points that are asked.
struct GroupOfLight {
    std::string name;
    Intensity needed; ///< multiplied by the least multiplier
    std::optional<Intensity> whole, left;
    Outcome outcome = Outcome::undecided;
    std::optional<bool> would_suffice; ///< where the proof is due
};

/// Rows of light: the figures in the worst direction, and the groups.
struct LightFigures {
    Multiplier multiplier;
    Intensity needed; ///< in the worst direction, multiplied by the least multiplier; or the most
    std::optional<Intensity> whole, left;
    std::vector<GroupOfLight> groups;
    std::optional<std::size_t> worst_group; ///< where a group decides, not the worst direction
    /// Of what decides: left - needed, or the most - whole; none where that is not known.
    std::optional<Intensity> margin;
};

/// What the visible part of a partly hidden lamp would give, where its proof is due.
struct LightEstimate {
    std::optional<bool> suffices;              ///< none where it cannot be told
    Because because = Because::of_the_figures; ///< why it cannot
    std::string row = {}; ///< which row of the proof says so; empty where it is the row itself
};

/// The category by which a lamp is held to rows that speak of some categories alone, where a gap
/// says which category a lamp may have.
struct CategoryByGap {
    std::string declared; ///< by the study, which is then what counts; may be empty
    /// What the gap can give: one where it is known closely enough to tell. Where none is declared,
    /// that one counts.
    std::vector<std::string> possible;
    std::optional<Measurement> gap; ///< none where the other lamp is not in the study
    bool contradicts = false;       ///< the declared one is none that the gap allows

    /// Empty where that is not known.
    std::string counts() const
    {
        return declared.empty() && possible.size() == 1 ? possible.front() : declared;
    }
};

/// One lamp under one row.
struct LampVerdict {
    std::size_t look = 0; ///< place in Findings::looks
    Outcome outcome = Outcome::undecided;
    Because because = Because::of_the_figures;
    Field field;                              ///< as it applied, relaxations included
    std::optional<std::size_t> relaxation;    ///< place in the row's, where one applied
    std::vector<DirectionVerdict> directions; ///< empty where the row looks in no direction
    /// Place in `directions`. Rows of area: the least visible area, exactly known. Rows of
    /// obstacles: the worst outcome, of these the largest hidden area.
    std::size_t worst = 0;
    Area needed;        ///< rows of area
    Area tolerated;     ///< rows of obstacles: so much hidden area counts as none, at `worst`
    Area least_visible; ///< at `worst`
    Area hidden;        ///< at `worst`, by what was not approved with the lamp
    Area mesh_error;    ///< at `worst`
    Area margin;        ///< rows of area: least_visible - needed; of obstacles: minus hidden
    Coverage coverage;
    Between between = Between::on_grid;
    Angle finest_step;                 ///< between directions, where `between` is `subdivided`
    std::vector<Crossing> crossings;   ///< by V, then H
    std::vector<Measurement> measured; ///< rows of place; of light the gap that multiplies it
    std::string follows;               ///< the category or multiplier that a gap gives; or empty
    std::optional<CategoryByGap> category; ///< where a row of the check asks what a gap gives
    std::optional<LightFigures> light;     ///< rows of light, where there is photometric data
    std::optional<LightEstimate> estimate; ///< where the proof is due and there is such data
    /// The margin as a share of what is asked, so that rows of different kinds can be compared.
    double relative_margin = 0;
    std::vector<UncoveredRange> uncovered; ///< largest first
    std::vector<Blocker> blockers; ///< by what they take in failing directions, then at worst
};

struct RowFindings {
    RuleRow row;                         ///< the figures and where they come from
    std::vector<LampVerdict> lamps;      ///< in the check's order, twins after their lamps
    std::optional<LampVerdict> together; ///< where the row lets lamps answer together
    bool not_chosen = false; ///< the maker chose another way: shown, but the answer does not ask it
    /// The table of a row that is here for its estimate only, as the proof that another row of the
    /// check asks for; empty: a row of the check's own rule.
    std::string proof_from = {};
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
    Because because = Because::of_the_figures; ///< what the deciding verdict does not tell
    std::string explanation;                   ///< of `because`: which rule, which lamp; or empty
    std::vector<std::string> options;          ///< what the study chose
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
