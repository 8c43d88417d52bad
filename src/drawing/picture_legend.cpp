#include "drawing/picture_legend.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double swatch_width = 16, swatch_height = 8, gap = 4, between = 12, row_height = 11.5;
constexpr double text_size = 8;

/// From a picture's rim to what is written beside it.
constexpr double inset = 2;

struct PlacedText {
    Point2 at; ///< of its swatch, from the legend's top left corner
    Text text;
};

std::vector<PlacedText> placed_in(double width, const std::vector<Swatch>& entries)
{
    std::vector<PlacedText> all;
    Point2 at(0, 0);
    for (const Swatch& entry : entries) {
        Text text{.words = entry.words, .size = text_size};
        const double most = width - swatch_width - gap;
        const double wide = std::min(most, extent_of(text).width + 1);
        if (at.x() > 0 && at.x() + swatch_width + gap + wide > width)
            at = {0, at.y() + row_height};
        text.width = wide;
        text.most_lines = 1;
        all.push_back({at, text});
        at.x() += swatch_width + gap + wide + between;
    }
    return all;
}

} // namespace

double legend_height(double width, const std::vector<Swatch>& entries)
{
    double bottom = 0;
    for (const PlacedText& placed : placed_in(width, entries))
        bottom = std::max(bottom, placed.at.y() + extent_of(placed.text).height);
    return bottom;
}

void draw_legend(Canvas& canvas, const Rect& room, const std::vector<Swatch>& entries)
{
    const std::vector<PlacedText> placed = placed_in(room.width, entries);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const Point2 at = Point2(room.x, room.y) + placed[i].at;
        const double down = (extent_of(placed[i].text).height - swatch_height) / 2;
        const Path swatch = path_of({at.x(), at.y() + down, swatch_width, swatch_height});
        canvas.fill(swatch, {entries[i].colour});
        if (entries[i].hatch)
            canvas.hatch(swatch, *entries[i].hatch);
        canvas.stroke(swatch, {.width = 0.6});
        canvas.text({at.x() + swatch_width + gap, at.y()}, placed[i].text);
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
                {.words = title,
                 .size = 10,
                 .bold = true,
                 .width = room.width - taken.width - between - 2 * inset,
                 .most_lines = 1});
}

} // namespace glim
