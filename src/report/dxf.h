#pragma once

#include "geometry/vector.h"

#include <span>
#include <string>
#include <vector>

namespace glim {

/// A line of a drawing, mm.
struct DxfLine {
    std::string layer; ///< made plain and upper case: the format knows no other names
    std::vector<Point2> points;
    bool closed = false;
};
struct DxfLabel {
    std::string layer, words;
    Point2 at = Point2::Zero();
    double height_mm = 15;
};

/// A drawing of polylines and labels as ASCII DXF of release 12 (AC1009), the one that every
/// program reads: header, line type, layers, entities; mm, coordinates to 0.001. Groups of code and
/// value as that release's reference has them.
std::string dxf_of(std::span<const DxfLine> lines, std::span<const DxfLabel> labels);

} // namespace glim
