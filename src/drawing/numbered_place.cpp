#include "drawing/numbered_place.h"

namespace glim {

namespace {

constexpr Colour mark_colour{170, 20, 40};
constexpr double radius = 6.5;

} // namespace

void draw_numbered_place(Canvas& canvas, const Point2& at, const std::string& number)
{
    canvas.fill(circle_at(at, radius), {.colour = white});
    canvas.stroke(circle_at(at, radius), {.colour = mark_colour, .width = 1.4});
    const Text text{
        .words = number, .size = 8, .bold = true, .colour = mark_colour, .align = Align::centre};
    canvas.text({at.x(), at.y() - extent_of(text).height / 2}, text);
}

} // namespace glim
