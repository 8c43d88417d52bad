#pragma once

#include "visibility/cell_tree.h"
#include "visibility/contour_window.h"
#include "visibility/lit_look.h"
#include "visibility/placed_mesh.h"
#include "visibility/touch_zone.h"

namespace glim {

/// One byte a lattice cell: by whom a shadow's rim may run across it; 0 where none does.
using CellMarks = std::vector<std::uint8_t>;
inline constexpr std::uint8_t marked_by_approved = 1; ///< see PlacedMesh
inline constexpr std::uint8_t marked_by_others = 2;

/// Proves of lattice cells that each is wholly lit or wholly dark. What is seen of a lit face can
/// change only where an obstacle's outline passes before it, or where an obstacle pierces or
/// touches it: cells that neither meets are uniform, however thin the obstacle.
///
///     const Certificate certificate = scene.certificate_of(lamp, view, directions, workers);
///     const SeenArea seen = seen_toward(view, directions[0], &certificate);
///     // seen.low <= what ExactView says <= seen.high
///
/// Goes by the same skip as rays and exact areas do (visibility/touch.h), and holds of the meshes
/// in double and of the rays in float alike: what passes within a float's grain marks (ray_grain).
class Certificate {
public:
    /// `obstacles` in the vehicle frame, all that block the lamp; `origin` is the scene frame's
    /// zero in it. Gathers for the directions given and those near them: see covers().
    Certificate(const LampView& view, std::span<const PlacedMesh> obstacles, const Point& origin,
                std::span<const Direction> directions, const Workers& workers);

    /// True at least for the directions given, and within the same tiles of 10 degrees.
    bool covers(const Direction& toward) const { return window_.covers(toward); }
    /// For the cells that face the eye. Requires: the look is at the view of the constructor (or a
    /// copy made alike), in a direction that is covered. Pure: the same in any thread.
    CellMarks marks(const LitLook& look) const;

private:
    CellTree tree_;
    ContourWindow window_;
    TouchZone zone_;
};

} // namespace glim
