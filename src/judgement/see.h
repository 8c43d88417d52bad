#pragma once

#include "judgement/plan.h"
#include "judgement/shine.h"
#include "judgement/surface_taken.h"
#include "machine/workers.h"

namespace glim {

/// A plan's lamps made ready to be looked at, one or more views a look.
class Eyes {
public:
    /// `study`, `scene` outlive the eyes. Throws Stopped.
    Eyes(const Study& study, const PreparedScene& scene, const Plan& plan, const Workers& workers);

    /// Fills every look's `seen`, `mesh_error` and `light`. Where a coarse proof shows that samples
    /// missed what a verdict hangs on, everything is proved. Throws Stopped.
    void see(Plan& plan, const Workers& workers) const;
    /// Adds directions between the grid's to what is asked, and looks there. Throws Stopped.
    void see_more(Plan& plan, Asked& asked, const std::vector<Bearing>& toward,
                  const Workers& workers) const;
    /// Asks the exact areas on which verdicts still hang, until none does. Throws Stopped.
    void settle(Plan& plan, const Workers& workers) const;

    /// The areas of a look in one more direction; sampled. Pure.
    SeenArea seen(std::size_t look, const Bearing& bearing, const LampFrame& frame) const;
    /// The same of what is visible alone (see visible_toward); quicker. Pure.
    SeenArea visible(std::size_t look, const Bearing& bearing, const LampFrame& frame) const;
    /// How far they may be off because meshes are not surfaces.
    Area mesh_error(std::size_t look, const SeenArea& seen) const;

    /// What the look's obstacles take toward one direction; names the same surface once.
    std::vector<SurfaceTaken> taken(std::size_t look, const Direction& toward) const;

private:
    struct Eye {
        LampView view;
        std::optional<Certificate> certificate;
        ExactView exact;
        std::vector<Standing> obstacles;
        Length lit_chord;
        std::optional<Shining> shining;
    };
    struct Task {
        std::size_t look, at;
    };

    Eye eye_of(const PreparedScene& scene, const LampStanding& lamp,
               const std::vector<Direction>& proved, const Workers& workers) const;
    void see(Plan& plan, const Task& task) const;
    void see(Plan& plan, const std::vector<Task>& tasks, const Workers& workers) const;
    void prove_what_was_missed(Plan& plan, const Workers& workers) const;
    /// Before a row of obstacles or of light may be called met: something thin may have slipped
    /// between the samples. Whether there was anything to prove.
    bool prove_what_may_be_met(const RuleRow& row, const Asked& asked, Plan& plan,
                               const Workers& workers) const;
    static void add_unproved(std::vector<Task>& tasks, Plan& plan, const Asked& asked);
    void ask_exactly(LampLook& look, std::size_t place, const std::vector<std::size_t>& at,
                     bool hidden_too, const Workers& workers) const;
    void ask_exactly(LampLook& look, std::size_t place, std::size_t at, bool hidden_too,
                     const Workers& workers) const;
    void settle(const RuleRow& row, const Asked& asked, Plan& plan, const Workers& workers) const;
    /// Of directions that are open: the widest chord of all obstacles gives way to that of those in
    /// the way there.
    void narrow_mesh_errors(Plan& plan, std::size_t place, std::vector<std::size_t> at,
                            const Workers& workers) const;
    Area mesh_error(std::size_t look, const SeenArea& seen, Length obstacles) const;
    Length chord_of_takers(std::size_t look, const Direction& toward) const;

    const Study& study_;
    std::vector<std::vector<Eye>> eyes_; ///< one list a look
    std::vector<Length> widest_chord_;   ///< of all obstacles; one a look
};

} // namespace glim
