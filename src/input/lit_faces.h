#pragma once

#include "input/study_lamps.h"

namespace glim {

/// Of a lit surface, seen along its lamp's axis and from behind, the share seen from behind: a lens
/// or two of the wrong way round is more than `few_against`, all of it more than `most_against`.
inline constexpr double few_against = 0.2;
inline constexpr double most_against = 0.8;

/// Sum of A max(0, -n.d) over the sum of A |n.d|: 0 if every facet looks along `toward`, 1 if every
/// facet looks against it, one half for a closed body. Nothing for what stands edge on.
std::optional<double> share_against(const TriangleMesh& mesh, const Direction& toward);

/// Which way the lit face of a lamp looks: along its axis if it has one, else by its function.
/// Nothing where the function leaves it open.
std::optional<Direction> lit_way(const Lamp& lamp, const Vehicle& vehicle);

/// Turns over what is to look outward, and complains of lit surfaces that look inward, or both ways
/// at once, while the user does not say that they are right.
void orient_lit_faces(std::vector<SurfaceDraft>& surfaces, const std::vector<LampDraft>& lamps,
                      const Vehicle& vehicle, Complaints& complaints);

/// Complains of lamps whose lit surfaces lie on another side than they say, and of pairs without a
/// twin.
void check_lamp_sides(const std::vector<SurfaceDraft>& surfaces,
                      const std::vector<LampDraft>& lamps, const Vehicle& vehicle,
                      Complaints& complaints);

} // namespace glim
