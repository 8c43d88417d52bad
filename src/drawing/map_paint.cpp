#include "drawing/map_paint.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr double pixels_per_point = 2;
constexpr double halo = 1.4; ///< points, on both sides of a line

void cased_stroke(Canvas& canvas, const Path& path, const Pen& pen)
{
    canvas.stroke(path, {.colour = white, .width = pen.width + halo});
    canvas.stroke(path, pen);
}

} // namespace

HatchLook hatch_look(Outcome outcome)
{
    switch (outcome) {
    case Outcome::not_met:
        return {degrees(45), 4.5};
    case Outcome::proof_due:
        return {degrees(0), 4.5};
    default:
        return {degrees(135), 7};
    }
}

void paint_directions(Canvas& canvas, const MapFrame& frame, const Path& outline,
                      const Painter& painter)
{
    const auto pixels = [](double points) {
        return std::max(1, static_cast<int>(std::lround(points * pixels_per_point)));
    };
    Raster raster(pixels(frame.plot.width), pixels(frame.plot.height), white);
    for (int y = 0; y < raster.height; ++y)
        for (int x = 0; x < raster.width; ++x) {
            const Point2 middle{frame.plot.x + (x + 0.5) / raster.width * frame.plot.width,
                                frame.plot.y + (y + 0.5) / raster.height * frame.plot.height};
            const auto bearing = frame.bearing_at(middle);
            const auto colour = bearing ? painter(*bearing) : std::nullopt;
            if (colour)
                raster.at(x, y) = *colour;
        }
    canvas.clipped(outline, [&] { canvas.image(raster, frame.plot, Grain::sharp); });
}

void hatch_outcome(Canvas& canvas, const Path& region, Outcome outcome)
{
    const auto [slant, spacing] = hatch_look(outcome);
    const Hatch light{
        .colour = white, .width = 0.8, .spacing = spacing, .slant = slant, .opacity = 1};
    Hatch dark = light;
    dark.colour = black;
    dark.width = 1.8;
    dark.opacity = 0.5;
    canvas.hatch(region, dark);
    canvas.hatch(region, light);
}

void draw_threshold(Canvas& canvas, const Path& line)
{
    cased_stroke(canvas, line, {.width = 1.4});
}

void draw_outline(Canvas& canvas, const Path& outline) { canvas.stroke(outline, {.width = 1}); }

void draw_worst(Canvas& canvas, const Point2& at)
{
    const Path ring = circle_at(at, worst_radius);
    canvas.fill(ring, {white});
    canvas.stroke(ring, {.width = 1.2});
    canvas.fill(circle_at(at, 1.4), {black});
}

void draw_found_between(Canvas& canvas, const Point2& at)
{
    constexpr double arm = 2.5;
    Path cross;
    cross.add({at + Point2(-arm, -arm), at + Point2(arm, arm)}, false);
    cross.add({at + Point2(-arm, arm), at + Point2(arm, -arm)}, false);
    cased_stroke(canvas, cross, {.width = 1.1});
}

} // namespace glim
