#pragma once

#include "remedy/relief_ground.h"

namespace glim {

/// What one lamp toward one direction asks of the surfaces before it: each column of its view is to
/// be freed as deep as `depth_mm` says.
struct DepthAsked {
    std::size_t eye = 0;
    std::vector<PushLine> lines;  ///< the main one first
    std::vector<double> depth_mm; ///< one a column of the main line; 0: not freed

    /// The deepest of all columns: what the other lines ask for.
    double deepest_mm() const;
};

/// A point as one line of a sight has it: asked to go `base + depth` deep, no further than `most`,
/// by the columns from `first` to `last`, itself in `column`.
struct AskedOfPoint {
    double base_mm, most_mm;
    std::uint32_t first, last, column;
};
/// Nothing where the line asks nothing of a point there, whatever the depth. A point as near as
/// `margin_mm` to a column counts with it, so that the facets around go down with it.
std::optional<AskedOfPoint> asked_of_point(const PushLine& line, const Point& scene_point,
                                           double margin_mm);

/// One of the ground's patches.
struct PatchOfGround {
    const ReliefGround& ground;
    std::size_t place;
};

/// How deep each point of a mesh standing as `standing` has to go; 0: not asked. `points` in the
/// patch's own frame. Throws Stopped.
std::vector<double> wanted_depths(const PatchOfGround& patch, const std::vector<Point>& points,
                                  const std::vector<DepthAsked>& asked, double margin_mm,
                                  const Workers& workers);

/// One byte a facet of a patch's mesh: 1 where some point of it, corners or not, may be asked to
/// sink. Facets without an edge longer than `longest_mm` are not looked at. Throws Stopped.
std::vector<std::uint8_t> asked_facets(const PatchOfGround& patch, const TriangleMesh& mesh,
                                       const std::vector<DepthAsked>& asked, double longest_mm,
                                       const Workers& workers);

} // namespace glim
