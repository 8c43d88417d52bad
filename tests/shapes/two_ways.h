#pragma once

#include "shapes/exact_definition.h"

#include <memory>
#include <string>

namespace glim::shapes {

/// One lamp from one direction, by the program and by the definition.
struct Compared {
    Area by_definition;
    Area hidden_by_definition; ///< by what was not approved, where the approved hide nothing
    ExactArea exact;
    ExactHidden exact_hidden;
    SeenArea seen; ///< with its certificate
    /// What does not hold, a sentence with its figures each; empty if all does.
    std::vector<std::string> broken;

    Area difference() const; ///< between exact and definition, without sign
};

/// The program's answers for one lamp beside those of the definition.
class TwoWays {
public:
    /// The certificate is made for all of `directions` together, as a check makes it for a field.
    TwoWays(Study study, const LampStanding& lamp, std::span<const Direction> directions);

    /// Claims: exact areas are within their stated rounding of the definition; the sampled bounds
    /// are certified and hold the definition's area, and so do the bounds of what is hidden.
    /// Requires: one of the directions.
    Compared toward(const Direction& toward) const;

private:
    std::unique_ptr<Study> study_; ///< where it is must not change: the scene points to it
    PreparedScene scene_;
    ExactDefinition definition_;
    LampView view_;
    Certificate certificate_;
    ExactView exact_;
};

} // namespace glim::shapes
