#include "input/plain_ply.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace glim {

namespace {

void append(std::string& bytes, std::uint32_t number)
{
    for (int i = 0; i < 4; ++i)
        bytes += static_cast<char>(number >> (8 * i));
}

} // namespace

void PlainPly::add_point(const Point& p)
{
    for (const double x : p) {
        const auto rounded = static_cast<float>(x);
        append(point_bytes_, std::bit_cast<std::uint32_t>(rounded));
        most_rounding_ = std::max(most_rounding_, std::abs(x - rounded));
    }
    least_ = points_ == 0 ? p : Point(least_.cwiseMin(p));
    most_ = points_ == 0 ? p : Point(most_.cwiseMax(p));
    ++points_;
}

void PlainPly::add_face(std::span<const std::uint32_t> corners)
{
    append(face_bytes_, static_cast<std::uint32_t>(corners.size()));
    for (const std::uint32_t corner : corners)
        append(face_bytes_, corner);
    corners_ += corners.size();
    ++faces_;
}

std::string PlainPly::bytes() const
{
    return "ply\nformat binary_little_endian 1.0\nelement vertex " + std::to_string(points_) +
           "\nproperty float x\nproperty float y\nproperty float z\nelement face " +
           std::to_string(faces_) + "\nproperty list int int vertex_indices\nend_header\n" +
           point_bytes_ + face_bytes_;
}

} // namespace glim
