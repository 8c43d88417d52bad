#pragma once

#include "judgement/near_eye.h"
#include "judgement/plan.h"

namespace glim {

/// One verdict that is followed from build to build: a row of area or of obstacles, of one lamp or
/// of the lamps of one side together. Places in the plan.
struct Followed {
    std::size_t check = 0, row = 0;
    std::size_t lamp = 0; ///< in AskedRow::lamps; where `together`, in AskedRow::together
    bool together = false;
};

/// What one build shows of one followed verdict.
struct BuildLook {
    Area figure;        ///< least visible area; of a row of obstacles, the largest hidden one
    std::size_t at = 0; ///< where that is: place in the look's directions
    Outcome outcome = Outcome::undecided;
};

/// A plan's looks in build after build. Areas are sampled, and taken as they are; a look without
/// obstacle rows is corrected by what its coarser lattice misses as drawn. What rows ask about
/// places and light, conditions, fields and their axes stay as drawn.
class BuiltLooks {
public:
    /// `plan` with every look's areas as drawn, as Eyes::see leaves them, and `visible_only`
    /// filled. All outlive it. Throws Stopped.
    BuiltLooks(const BuildGround& ground, Plan plan, const Workers& workers);

    const Plan& plan() const { return plan_; }
    const std::vector<Followed>& followed() const { return followed_; }
    const AskedRow& row_of(const Followed& f) const { return plan_.checks[f.check].rows[f.row]; }
    const Asked& asked_of(const Followed& f) const;
    const LampLook& look_of(const Followed& f) const { return plan_.looks[asked_of(f).look]; }

    /// From now on only these directions of each followed verdict are looked at, in the order of
    /// followed(): places in the looks.
    void keep_only(const std::vector<std::vector<std::size_t>>& at);

    /// What one thread works with.
    struct Bench {
        std::vector<LampLook> looks;
        RimSearch search = RimSearch::quick;
    };
    Bench bench(RimSearch search = RimSearch::quick) const;
    /// One a followed verdict; `deviations` one a factor of the moves.
    std::vector<BuildLook> look(Bench& bench, std::span<const double> deviations) const;

    /// How each followed verdict stands in each of its directions: what is in view, of rows of
    /// obstacles minus what is hidden. The least is the worst.
    std::vector<std::vector<Area>> standings(Bench& bench,
                                             std::span<const double> deviations) const;

private:
    void follow();
    void correct();
    std::vector<NearEye::Before> before_eyes(std::size_t look, const BuildPlaces& places) const;
    /// Toward one direction of a look.
    void see(Bench& bench, std::size_t look, std::size_t at,
             const std::vector<NearEye::Before>& before) const;
    void see_all(Bench& bench, const BuildPlaces& places) const;
    struct SurelySeen {
        std::size_t at;
        Area area; ///< no more than what is seen there
    };
    /// Of one look, the least first.
    std::vector<SurelySeen> surely_seen(std::size_t look,
                                        const std::vector<NearEye::Before>& before) const;
    void see_what_decides(Bench& bench, const BuildPlaces& places) const;

    BuildGround ground_;
    Plan plan_;
    std::vector<Followed> followed_;
    std::vector<std::vector<std::size_t>> at_; ///< by look: where it is looked
    /// By look and direction: who of `followed_` goes by it.
    std::vector<std::vector<std::vector<std::size_t>>> verdicts_at_;
    std::vector<std::vector<NearEye>> eyes_;     ///< by look and lamp
    std::vector<std::vector<Area>> corrections_; ///< by look and direction
};

} // namespace glim
