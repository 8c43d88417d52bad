#pragma once

#include "model/keep_clear_wish.h"
#include "remedy/sight_sheaf.h"

namespace glim {

/// Which part of a lit face has to stay in view in some directions: all points whose height in the
/// sense of the favoured edge is at least `level`. Level frame.
struct KeptPart {
    FieldRectangle toward;
    double level = 0; ///< mm along the favoured edge's axis; minus infinity: the whole face
};

/// What of a lamp is kept in view for a row of area.
struct KeptParts {
    FavouredEdge edge = FavouredEdge::upper;
    std::vector<KeptPart> parts; ///< one for each piece of the field
    Field field;                 ///< uncut
    /// In so many pieces of the field the whole lamp shows less than is needed.
    std::size_t too_small = 0;
};

/// How much of a lamp has to be seen in every direction: the larger of the two.
struct PartNeeded {
    Area area;
    double share = 0; ///< of what its face shows there
};

/// The field in pieces of at most `step` across, above and below the horizontal apart, each with
/// the least part of `lit` (level frame) that shows `needed` in its corners, its middle and the
/// middles of its sides, and `kept_spare` of that more. What the lamp hides of itself is not
/// counted. Requires: `edge` is one of the four.
KeptParts kept_parts(const TriangleMesh& lit, const Field& field, const PartNeeded& needed,
                     FavouredEdge edge, Angle step);
/// Between the directions looked at, areas change by less.
inline constexpr double kept_spare = 0.005;

/// The same where all of the lamp has to be seen: pieces as large as sheaves allow.
KeptParts whole_parts(const Field& field);

/// The sheaves of these parts of `lit`, which may be a part of the lamp itself.
std::vector<SightSheaf> sheaves_of(const TriangleMesh& lit, const KeptParts& kept);

} // namespace glim
