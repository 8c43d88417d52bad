#pragma once

#include "remedy/relief.h"

namespace glim::test {

// A lamp of 100 by 50 mm at x = 0, from z = -25 to 25, behind a hump that is pushed down. Meshes
// are plane, so that chord errors are 0 and depths are known on paper.

/// A strip of facets that follows `profile` in x and z, from y_least to y_most, looking up.
TriangleMesh strip(const std::vector<std::array<double, 2>>& profile, double y_least,
                   double y_most);
/// Two ramps that meet in a ridge at x = 200: the wedge nose.
TriangleMesh wedge(double ridge_z, double y_least = -150, double y_most = 150);
/// The upper half of a cylinder along y, of radius 100, about x = 300, in facets.
TriangleMesh round_nose(double top_z, int facets);

/// The lamp behind `hump`, which may be reshaped, asked for `least_mm2` in a field of degrees.
Study lamp_behind_hump(TriangleMesh hump, double least_mm2, std::array<double, 4> field);
/// The same with something fixed in the way.
void add_fixed(Study& study, const std::string& name, TriangleMesh mesh);

/// Looks every 5 degrees, in one thread.
Relief relief_of(const Study& study);

} // namespace glim::test
