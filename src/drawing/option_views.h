#pragma once

#include "drawing/figure.h"
#include "judgement/session.h"

#include <optional>
#include <string>
#include <vector>

namespace glim {

/// An eye that looks at every option from the same direction, so that pictures can be held beside
/// each other.
struct ComparedView {
    std::vector<std::string> checks; ///< what it is about, by name
    std::string lamp;
    bool twin = false;
    ReferenceAxis axis = ReferenceAxis::forward; ///< that `toward` counts from
    Bearing toward;                              ///< from the lamp to the eye
};

/// Of each check that looks in directions, the lamp that decides or is worst, from where it is
/// worst; once where checks share it. Of the first option, for all.
std::vector<ComparedView> compared_views(const Findings& findings);

/// What one option shows of one compared view.
struct OptionView {
    /// The lamp that the option's own answer hangs on, from the view's direction, or, where its
    /// directions count from another axis, from where it is worst; none where none is looked at.
    std::optional<Figure> eye;
    std::optional<Figure> vehicle; ///< the corner around that lamp
};

/// One a view, the titles beginning with the option's name. `findings` are those of the session as
/// it is. Throws Stopped.
std::vector<OptionView> option_views(const Session& session, const Findings& findings,
                                     const std::vector<ComparedView>& views,
                                     const std::string& option, const Workers& workers);

} // namespace glim
