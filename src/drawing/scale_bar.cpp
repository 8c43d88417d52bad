#include "drawing/scale_bar.h"

#include "words/numbers.h"

#include <cmath>

namespace glim {

Length round_length(Length longest)
{
    constexpr double rounding = 1e-9; // 50 mm that came out a little short are 50 mm
    const double mm = in_mm(longest) * (1 + rounding);
    double decade = std::pow(10.0, std::floor(std::log10(mm)));
    for (const double digit : {5.0, 2.0})
        if (digit * decade <= mm)
            return millimetres(digit * decade);
    return millimetres(decade);
}

void draw_scale_bar(Canvas& canvas, const Rect& room, Length point)
{
    constexpr double tick = 5;
    const Length length = round_length(room.width * point);
    const double left = room.right() - length / point;
    const double y = room.bottom() - tick / 2;
    canvas.text({(left + room.right()) / 2, y - 14},
                {.words = shortest(in_mm(length)) + " mm", .size = 8, .align = Align::centre});
    Path bar = segment({left, y}, {room.right(), y});
    for (const double x : {left, room.right()})
        bar.move_to({x, y - tick / 2}).line_to({x, y + tick / 2});
    canvas.stroke(bar, {.width = 1.25});
}

} // namespace glim
