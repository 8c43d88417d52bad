#include "visibility/ambient_light.h"

#include "units/trig.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace glim {

namespace {

/// Pixels that share their directions: a square of so many a side.
constexpr std::uint32_t side = 4;
constexpr std::size_t asked_by_each = 2;
constexpr std::size_t directions = std::size_t{side} * side * asked_by_each;

/// Half of the sphere, evenly: places on a spiral from the pole to the equator, each turned on by
/// the golden angle. Their opposites make the other half.
Direction half_sphere(std::size_t i)
{
    constexpr Angle golden = degrees(137.50776405003785);
    const double z = 1 - (static_cast<double>(i) + 0.5) / directions;
    const double r = std::sqrt(1 - z * z);
    const Angle turn = static_cast<double>(i) * golden;
    return Direction::along({r * cos(turn), r * sin(turn), z});
}

/// Whether the surface goes on from one sample to another, which lies `way` mm to the right and up.
bool goes_on(const BodySample& here, const BodySample& there, const Eigen::Vector2f& way,
             float pixel_mm)
{
    constexpr float alike = 0.9F;      // a cosine: some 25 degrees
    constexpr float off_pixels = 1.5F; // out of the surface's plane
    return there.part == here.part && there.slant.dot(here.slant) > alike &&
           std::abs(here.slant.dot(Eigen::Vector3f(way.x(), way.y(), there.depth - here.depth))) <
               off_pixels * pixel_mm;
}

} // namespace

AmbientLight::AmbientLight(const Caster& caster, const PictureRays& rays)
    : caster_(caster), rays_(rays)
{
    const PictureFrame& frame = rays.frame();
    // A quarter of the picture: what is farther off does not make a hollow to the eye.
    reach_ = 0.25 * std::min(frame.width, frame.height) * frame.pixel;
    found_.resize(std::size_t{frame.width} * frame.height);
}

std::vector<AmbientLight::Pixel> AmbientLight::pixels_that_ask(std::size_t which,
                                                               std::size_t band) const
{
    const PictureFrame& frame = rays_.frame();
    const auto top = static_cast<std::uint32_t>(band * rows_of_band);
    const std::uint32_t bottom = std::min(frame.height, top + rows_of_band);
    std::vector<Pixel> pixels;
    for (auto y = static_cast<std::uint32_t>(top + which / side); y < bottom; y += side)
        for (auto x = static_cast<std::uint32_t>(which % side); x < frame.width; x += side)
            pixels.push_back({x, y});
    return pixels;
}

void AmbientLight::ask(const std::vector<BodySample>& samples, const std::vector<Pixel>& pixels,
                       const Direction& sky)
{
    const PictureFrame& frame = rays_.frame();
    const Eigen::Vector3f to_sky(static_cast<float>(sky.dot(frame.across)),
                                 static_cast<float>(sky.dot(frame.up)),
                                 static_cast<float>(sky.dot(frame.toward)));
    std::vector<RayStart> starts;
    std::vector<std::pair<Found*, float>> asking;
    for (const Pixel& p : pixels) {
        const BodySample& sample = samples[sample_of(p)];
        const float squarely = sample.slant.dot(to_sky);
        if (!sample.any() || squarely <= 0)
            continue;
        starts.push_back(off_surface(p, sample));
        asking.emplace_back(&found_[index_of(p)], squarely);
    }
    const std::vector<std::uint8_t> hidden = caster_.occluded(sky, starts, reach_);
    for (std::size_t i = 0; i < asking.size(); ++i) {
        const auto [found, squarely] = asking[i];
        found->asked += squarely;
        found->open += hidden[i] != 0 ? 0 : squarely;
    }
}

RayStart AmbientLight::off_surface(const Pixel& pixel, const BodySample& sample) const
{
    const PictureFrame& frame = rays_.frame();
    const double off_mm = 0.5 * in_mm(frame.pixel);
    const Vector slant = sample.slant.cast<double>();
    const Point p =
        rays_.at_depth({pixel.x * samples_a_side, pixel.y * samples_a_side}, sample.depth) +
        off_mm *
            (slant.x() * frame.across + slant.y() * frame.up + slant.z() * frame.toward.vector());
    return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z()),
            static_cast<float>(off_mm)};
}

void AmbientLight::gather(const std::vector<BodySample>& samples, std::size_t band)
{
    for (std::size_t which = 0; which < std::size_t{side} * side; ++which) {
        const std::vector<Pixel> pixels = pixels_that_ask(which, band);
        for (std::size_t i = 0; i < asked_by_each; ++i) {
            const Direction sky = half_sphere(which + i * side * side);
            ask(samples, pixels, sky);
            ask(samples, pixels, -sky);
        }
    }
}

float AmbientLight::open_at(const std::vector<BodySample>& samples, const SamplePlace& place) const
{
    const PictureFrame& frame = rays_.frame();
    const BodySample& here = samples[rays_.index(place)];
    const auto pixel_mm = static_cast<float>(in_mm(frame.pixel));
    const Pixel at{place.column / samples_a_side, place.row / samples_a_side};
    Found sum;
    for (std::uint32_t y = at.y < 2 ? 0 : at.y - 2; y < std::min(frame.height, at.y + 2); ++y)
        for (std::uint32_t x = at.x < 2 ? 0 : at.x - 2; x < std::min(frame.width, at.x + 2); ++x) {
            const Eigen::Vector2f way(static_cast<float>(x) - static_cast<float>(at.x),
                                      static_cast<float>(at.y) - static_cast<float>(y));
            if (!goes_on(here, samples[sample_of({x, y})], pixel_mm * way, pixel_mm))
                continue;
            const Found& found = found_[index_of({x, y})];
            sum.open += found.open;
            sum.asked += found.asked;
        }
    return sum.asked > 0 ? sum.open / sum.asked : 1;
}

} // namespace glim
