#include "drawing/colour_bar.h"

#include "drawing/legend.h"
#include "words/chart_words.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double bar_width = 11;
constexpr double tick = 3;
constexpr int steps = 256;

double y_of(const ColourBar& bar, const Rect& box, double figure)
{
    return box.bottom() - bar.scale.share_of(figure) * box.height;
}

void draw_colours(Canvas& canvas, const ColourBar& bar, const Rect& box)
{
    Raster raster(1, steps);
    for (int i = 0; i < steps; ++i)
        raster.at(0, i) = bar.colour(bar.scale.figure_at(1 - (i + 0.5) / steps));
    canvas.image(raster, box, Grain::sharp);
    canvas.stroke(path_of(box), {.colour = {90, 90, 90}, .width = 0.6});
}

struct Tick {
    double figure;
    std::string words;
};

/// Round figures, and the ends where they stand for all beyond them.
std::vector<Tick> ticks_of(const ColourBar& bar, double height, double line)
{
    const double near_end = 1.2 * line / height; // as a share
    const int most_ticks = std::max(2, static_cast<int>(height / (1.6 * line)));
    std::vector<Tick> ticks;
    for (const double figure : bar.scale.ticks(most_ticks)) {
        const double share = bar.scale.share_of(figure);
        if (!(bar.open_below && share < near_end) && !(bar.open_above && 1 - share < near_end))
            ticks.push_back({figure, typeset_figure(figure)});
    }
    if (bar.open_below)
        ticks.push_back({bar.scale.least, "\u2264 " + typeset_figure(bar.scale.least)});
    if (bar.open_above)
        ticks.push_back({bar.scale.most, "\u2265 " + typeset_figure(bar.scale.most)});
    return ticks;
}

} // namespace

void draw_colour_bar(Canvas& canvas, const ColourBar& bar, const Rect& where)
{
    const Rect box{where.x, where.y, bar_width, where.height};
    draw_colours(canvas, bar, box);
    const Text title{.words = bar.title, .size = chart_text_size};
    canvas.text({where.x, where.y - extent_of(title).height - 6}, title);
    const double line = extent_of({.words = "0", .size = chart_text_size}).height;
    for (const Tick& t : ticks_of(bar, where.height, line)) {
        const double y = y_of(bar, box, t.figure);
        canvas.stroke(segment({box.right(), y}, {box.right() + tick, y}), {.width = 0.6});
        canvas.text({box.right() + tick + 3, y - line / 2},
                    {.words = t.words, .size = chart_text_size});
    }
    if (!bar.threshold || *bar.threshold < bar.scale.least || *bar.threshold > bar.scale.most)
        return;
    const double y = y_of(bar, box, *bar.threshold);
    const Path mark = segment({box.x - 2, y}, {box.right() + 2, y});
    canvas.stroke(mark, {.colour = white, .width = 2.8});
    canvas.stroke(mark, {.width = 1.4});
}

} // namespace glim
