#pragma once

#include "machine/workers.h"
#include "visibility/picture_frame.h"
#include "visibility/ray_caster.h"

#include <functional>
#include <vector>

namespace glim {

/// A place among a picture's samples: `column` below width * samples_a_side, likewise `row`.
struct SamplePlace {
    std::uint32_t column, row;
};

/// Where rays of a picture start, and where they came to.
class PictureRays {
public:
    /// Rays start `before` the frame's centre; `origin` is the scene frame's zero.
    PictureRays(const PictureFrame& frame, const Point& origin, Length before);

    std::uint32_t columns() const { return frame_.width * samples_a_side; }
    std::uint32_t rows() const { return frame_.height * samples_a_side; }
    std::size_t index(const SamplePlace& s) const
    {
        return std::size_t{s.row} * columns() + s.column;
    }

    RayStart start(const SamplePlace& s) const;
    /// Scene frame.
    Point at(const SamplePlace& s, float distance) const;
    Point at_depth(const SamplePlace& s, float depth) const
    {
        return at(s, static_cast<float>(in_mm(before_)) - depth);
    }
    float depth(float distance) const { return static_cast<float>(in_mm(before_) - distance); }

    const PictureFrame& frame() const { return frame_; }

private:
    PictureFrame frame_;
    Length before_;
    Point corner_;        ///< the top left corner, where rays start; scene frame
    Vector right_, down_; ///< to the next pixel
};

/// A picture is worked on in bands of so many rows of pixels.
inline constexpr std::uint32_t rows_of_band = 8;

/// The samples of one band, neighbours near each other in the list: so bundles of rays stay close.
std::vector<SamplePlace> samples_of_band(const PictureFrame& frame, std::size_t band);
/// Calls `work(band)` for each band, on several threads. Throws Stopped.
void for_each_band(const PictureFrame& frame, const Workers& workers,
                   const std::function<void(std::size_t band)>& work);

} // namespace glim
