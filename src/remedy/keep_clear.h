#pragma once

#include "remedy/clear_space.h"
#include "remedy/intrusion.h"
#include "remedy/kept_part.h"
#include "remedy/least_sight.h"
#include "remedy/ways_of_rule.h"

namespace glim {

/// What the lamp of one row of a check needs to stay empty.
struct KeepClearSpace {
    std::string check;
    RuleRow row;      ///< the figures and where they come from
    std::string lamp; ///< as results call it
    bool twin = false;
    Side side = Side::left;
    Field field; ///< as it applies to this lamp, relaxations included
    bool relaxed = false;
    /// Of rows that ask less than the whole lamp: which part is kept in view; what is needed.
    std::optional<FavouredEdge> kept;
    Area needed;
    /// In so many pieces of the field, of so many, the whole lamp shows less than is needed.
    std::size_t too_small = 0, pieces = 0;
    LeastSight least; ///< what the whole lamp shows where it shows least
    /// That is less than is needed, and no other lamp answers the row together with this one.
    bool shows_too_little = false;
    /// The rule may be met in another way, whose spaces are kept: this one need not be.
    bool spared = false;
    /// Where the tool chose the part: estimates of the space for each edge, in the order of
    /// FavouredEdge.
    std::vector<Volume> by_edge;
    /// Closed and consistently wound; vehicle frame. Where parts of the lamp stand above each
    /// other, several bodies that may run into each other.
    TriangleMesh mesh;
    std::size_t bodies = 0;
    Volume volume;                     ///< of the bodies together, as drawn
    std::optional<Length> within;      ///< see KeepClearBody
    std::vector<Intrusion> intrusions; ///< the deepest first

    /// The lamp is large enough for the row, and nothing reaches in.
    bool is_kept() const { return !shows_too_little && intrusions.empty(); }
};

/// Of a check whose rule may be met in one of several ways.
struct ChoiceOfSpaces {
    std::string check;
    WaysOfRule ways;
};

struct KeepClear {
    Box reach; ///< vehicle frame; empty where a plane ends the spaces
    Length chord_error;
    std::vector<KeepClearSpace> spaces;
    std::vector<ClearSpace> asked; ///< the same spaces in the same order, for further questions
    /// Rows that ask for no space: of place, of light, or not applicable; "check: row".
    std::vector<std::string> without_space;
    std::vector<ChoiceOfSpaces> choices; ///< each once

    /// Every space is, but those that are spared.
    bool is_kept() const;
};

/// The spaces of the study's wish, and what of its surfaces reaches into them. Throws InputError
/// where no row of the checks asks for a space or none of it lies within the reach; Stopped.
KeepClear find_keep_clear(const Session& session, const Workers& workers);

} // namespace glim
