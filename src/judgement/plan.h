#pragma once

#include "geometry/direction_grid.h"
#include "judgement/asked_lamps.h"
#include "visibility/prepared_scene.h"

namespace glim {

/// One lamp (or several taken together) under one row, before anything is measured.
struct Asked {
    std::size_t look = 0; ///< place in Plan::looks
    LampStanding lamp;    ///< of the first, where several answer together
    std::optional<Because> not_applicable;
    bool without_light = false; ///< the row asks for light, and there is no photometric data
    /// What the row says hangs on the lamp's category, which is not known.
    bool category_open = false;
    std::optional<CategoryByGap> category = {}; ///< where a gap gives the one that the row asks
    Multiplier multiplier;                      ///< of a table of light
    Field field;
    std::optional<std::size_t> relaxation;
    std::vector<std::size_t> at;     ///< the field's grid nodes as places in the look
    std::vector<SolidAngle> weights; ///< one a node; what was added between them has none
    /// How finely it was looked at between the nodes, where it was.
    std::optional<Angle> subdivided_to;
};

struct AskedRow {
    const RuleRow* row = nullptr;
    std::vector<Asked> lamps;
    /// Where the row lets lamps answer together: one a side of the vehicle.
    std::vector<Asked> together;
    /// Of a row that only tells what a proof would say: the table it is from. Else nothing.
    const RuleTable* proof_from = nullptr;
};

struct AskedCheck {
    const Check* check = nullptr;
    const RuleTable* table = nullptr;
    AskedLamps lamps;
    std::vector<AskedRow> rows; ///< of the check's rule, then those of proofs
};

/// Which lamps have to be looked at from where, so that every row of every check can be judged;
/// a direction that several rows ask of the same lamp is looked at once.
struct Plan {
    std::vector<LampLook> looks;                      ///< directions filled in, areas not yet
    std::vector<std::vector<LampStanding>> standings; ///< one list a look; areas add up
    std::vector<std::vector<bool>> certify; ///< by look and direction: contours must prove it
    /// By look: nobody asks what is hidden there and by whom, so that only the visible areas are
    /// looked at where nothing is certified (see visible_toward). Empty: everything is asked.
    std::vector<bool> visible_only = {};
    /// By look and direction: its mesh error counts only what is in the way there.
    std::vector<std::vector<bool>> narrowed;
    std::vector<AskedCheck> checks;
};

/// Points into `study`, which outlives the plan. Throws InputError where lamps that should answer
/// together have different axes.
Plan plan_of(const Study& study, const PreparedScene& scene, std::span<const std::size_t> checks,
             Angle step);

/// The order of a look's directions: by V, then H.
bool by_v_then_h(const Bearing& a, const Bearing& b);

/// Whether the row is judged of these lamps by looking in directions: it is known to apply, and
/// where it asks for light, there is photometric data.
bool looks_in_directions(const RuleRow& row, const Asked& asked);

/// Of whoever wants outcomes alone: fills `visible_only` for looks of which only rows of area are
/// asked that do not ask what is hidden.
void ask_what_outcomes_need(Plan& plan);

/// Whether contours must prove the row's bounds in every direction before it may be called met,
/// whatever the sampling says: a part hidden by something thin counts.
bool must_be_certified(const RuleRow& row);

} // namespace glim
