#pragma once

#include "visibility/lamp_view.h"

#include <vector>

namespace glim {

// What hides a lamp toward one direction, by surface and by facet. Each hidden lattice corner
// stands for a piece of hidden area, scaled so that all of them together make what is hidden; its
// ray tells who is in the way. How an area divides among several is precise to about a cell along
// their rims. Places of parts are those in `LampView::all`.

/// Projected area that a part takes.
struct TakenArea {
    Area alone;   ///< removing this part frees so much
    Area jointly; ///< others are in the way there too

    Area sum() const { return alone + jointly; }
};

/// One hidden corner's area, put down to a facet in its way.
struct BlamedFacet {
    std::uint32_t part;
    std::uint32_t facet; ///< place in the part's mesh
    bool first;          ///< no other part stands nearer to the lamp there
    Area area;
};

struct Blame {
    std::vector<TakenArea> parts; ///< one a part
    /// In the order of the lattice's corners: a facet appears as often as it is met. Of every part
    /// that a corner's ray meets the first facet is named, so that a part's facets take together
    /// what the part takes, and those that are `first` take together what is hidden.
    std::vector<BlamedFacet> facets;
};

/// Everything in the way, alone and jointly. Pure: the same answer in any thread. Facets nearer to
/// each other than the view's `touch` along a ray are in one place: the lowest part and facet is
/// taken there, whichever copy a processor meets first.
Blame blame_toward(const LampView& view, const Direction& toward);

/// Only the first facet in the way of each hidden corner: the cheaper question. All are `first`,
/// and they are those that blame_toward() calls so.
std::vector<BlamedFacet> first_blamed_toward(const LampView& view, const Direction& toward);

} // namespace glim
