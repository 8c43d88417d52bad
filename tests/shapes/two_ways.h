#pragma once

#include "shapes/exact_definition.h"

#include <memory>
#include <string>

namespace glim::shapes {

/// One lamp from one direction, by the program and by the definition.
struct Compared {
    Area by_definition;
    Area approved_by_definition;
    ExactArea exact;
    SeenArea seen;
    /// What does not hold, a sentence with its figures each; empty if all does.
    std::vector<std::string> broken;

    Area difference() const; ///< between exact and definition, without sign
};

/// The program's answers for one lamp beside those of the definition.
class TwoWays {
public:
    TwoWays(Study study, const LampStanding& lamp);

    /// Claims: the exact area is within its stated rounding of the definition; low <= area <= high
    /// holds for every direction.
    Compared toward(const Direction& toward) const;

private:
    std::unique_ptr<Study> study_; ///< where it is must not change: the scene points to it
    PreparedScene scene_;
    ExactDefinition definition_;
    LampView view_;
    ExactView exact_;
};

} // namespace glim::shapes
