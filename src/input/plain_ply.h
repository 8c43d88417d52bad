#pragma once

#include "geometry/vector.h"

#include <cstdint>
#include <span>
#include <string>

namespace glim {

/// What a checked file holds, written anew as binary PLY with nothing but coordinates and corners.
/// OpenMesh 9 misreads some valid files without a word (a comment in OFF, a list at a point, a
/// property before the corners of a face), so it is given this instead of the file itself.
class PlainPly {
public:
    /// Coordinates become floats, as OpenMesh holds them while it reads.
    void add_point(const Point& p);
    void add_face(std::span<const std::uint32_t> corners);

    std::size_t points() const { return points_; }
    std::size_t faces() const { return faces_; }
    std::size_t corners() const { return corners_; } ///< of all faces together

    /// How far the coordinates moved when they became floats, at most.
    double most_rounding() const { return most_rounding_; }
    double longest_side() const { return points_ == 0 ? 0 : (most_ - least_).maxCoeff(); }

    std::string bytes() const;

private:
    std::string point_bytes_;
    std::string face_bytes_;
    std::size_t points_ = 0;
    std::size_t faces_ = 0;
    std::size_t corners_ = 0;
    double most_rounding_ = 0;
    Point least_ = Point::Zero();
    Point most_ = Point::Zero();
};

} // namespace glim
