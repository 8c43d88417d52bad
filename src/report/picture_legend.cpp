#include "report/picture_legend.h"

#include "report/chart_words.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double swatch_width = 16, swatch_height = 8, gap = 4, between = 12, row_height = 13;
constexpr double text_size = 8;

/// From a picture's rim to what is written beside it.
constexpr double inset = 2;

} // namespace

void draw_legend(Canvas& canvas, const Rect& room, const std::vector<Swatch>& entries)
{
    double x = room.x, y = room.y;
    for (const Swatch& entry : entries) {
        Text text{.words = typeset(entry.words), .size = text_size};
        const double most = room.width - swatch_width - gap;
        const double wide = std::min(most, extent_of(text).width + 1);
        if (x > room.x && x + swatch_width + gap + wide > room.right()) {
            x = room.x;
            y += row_height;
        }
        text.width = wide;
        text.most_lines = 1;
        const double text_height = extent_of(text).height;
        const Path swatch =
            path_of({x, y + (text_height - swatch_height) / 2, swatch_width, swatch_height});
        canvas.fill(swatch, {entry.colour});
        if (entry.hatch)
            canvas.hatch(swatch, *entry.hatch);
        canvas.stroke(swatch, {.width = 0.6});
        canvas.text({x + swatch_width + gap, y}, text);
        x += swatch_width + gap + wide + between;
    }
}

void draw_border(Canvas& canvas, const Rect& p)
{
    constexpr Colour quiet{150, 150, 150};
    constexpr double pen = 0.5;
    canvas.stroke(path_of({p.x + pen / 2, p.y + pen / 2, p.width - pen, p.height - pen}),
                  {.colour = quiet, .width = pen});
}

void draw_title(Canvas& canvas, const Rect& room, const std::string& title,
                const std::string& figures)
{
    const Text right{.words = figures, .size = 9, .align = Align::right};
    const Extent taken = extent_of(right);
    canvas.text({room.right() - inset, room.y + 3}, right);
    canvas.text({room.x + inset, room.y + 2},
                {.words = typeset(title),
                 .size = 10,
                 .bold = true,
                 .width = room.width - taken.width - between - 2 * inset,
                 .most_lines = 1});
}

} // namespace glim
