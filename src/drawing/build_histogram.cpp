#include "drawing/chart_ticks.h"
#include "drawing/colour_map.h"
#include "drawing/legend.h"
#include "drawing/picture_legend.h"
#include "drawing/tolerance_charts.h"
#include "words/chart_words.h"
#include "words/numbers.h"
#include "words/tolerance_words.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double width = 400, height = 236;
constexpr Rect plot{44, 40, 338, 142};
constexpr double text_size = 8;
constexpr Colour bar_colour{92, 128, 176}, failing_colour{214, 170, 120};
constexpr Colour asked_colour{170, 40, 30}, drawn_colour{20, 20, 30}, stack_colour{120, 84, 20};

/// Figures from left to right, builds from the bottom up.
struct Scale {
    double least, most;
    double most_builds;

    double x(double figure) const
    {
        return plot.x + plot.width * (figure - least) / (most - least);
    }
    double y(double builds) const { return plot.bottom() - plot.height * builds / most_builds; }
};

/// A vertical line with its name on top.
struct Mark {
    double figure;
    std::string words;
    Pen pen;
};

std::vector<Mark> marks_of(const ToleratedVerdict& verdict)
{
    std::vector<Mark> marks;
    if (verdict.of_area)
        marks.push_back({verdict.needed_mm2, "needed", {.colour = asked_colour, .width = 1.4}});
    marks.push_back(
        {verdict.as_drawn_mm2, "as drawn", {.colour = drawn_colour, .width = 1, .dashes = {4, 2}}});
    if (verdict.worst)
        marks.push_back({verdict.worst->figure,
                         "worst stack-up",
                         {.colour = stack_colour, .width = 1, .dashes = {1.2, 2}}});
    return marks;
}

Scale scale_of(const ToleratedVerdict& verdict)
{
    const Histogram& bins = verdict.spread.histogram;
    double least = bins.least, most = bins.most();
    for (const Mark& mark : marks_of(verdict)) {
        least = std::min(least, mark.figure);
        most = std::max(most, mark.figure);
    }
    const double room = std::max(1.0, 0.04 * (most - least));
    const auto highest =
        static_cast<double>(*std::max_element(bins.counts.begin(), bins.counts.end()));
    return {std::max(0.0, least - room), most + room, 1.06 * highest};
}

void draw_bars(Canvas& canvas, const ToleratedVerdict& verdict, const Scale& scale)
{
    const Histogram& bins = verdict.spread.histogram;
    const double one = std::max(bins.width, (scale.most - scale.least) / 200);
    for (std::size_t i = 0; i < bins.counts.size(); ++i) {
        const double from = bins.least + bins.width * static_cast<double>(i);
        const double x = scale.x(from), right = scale.x(from + one);
        const double y = scale.y(static_cast<double>(bins.counts[i]));
        const Path bar = path_of({x, y, std::max(0.5, right - x - 0.6), plot.bottom() - y});
        const bool fails = verdict.of_area && from + one / 2 < verdict.needed_mm2;
        canvas.fill(bar, {.colour = fails ? failing_colour : bar_colour});
        if (fails)
            canvas.hatch(bar, {.colour = asked_colour, .spacing = 3});
    }
}

void draw_axes(Canvas& canvas, const ToleratedVerdict& verdict, const Scale& scale)
{
    canvas.stroke(segment({plot.x, plot.bottom()}, {plot.right(), plot.bottom()}), {});
    canvas.stroke(segment({plot.x, plot.y}, {plot.x, plot.bottom()}), {});
    for (const double at : area_ticks_mm2(scale.least, scale.most, 7)) {
        canvas.stroke(segment({scale.x(at), plot.bottom()}, {scale.x(at), plot.bottom() + 3}), {});
        canvas.text({scale.x(at), plot.bottom() + 4},
                    {.words = typeset_figure(at), .size = text_size, .align = Align::centre});
    }
    for (const double at : area_ticks_mm2(0, scale.most_builds, 5)) {
        const Text text{.words = typeset_figure(at), .size = text_size, .align = Align::right};
        canvas.stroke(segment({plot.x - 3, scale.y(at)}, {plot.x, scale.y(at)}), {});
        canvas.text({plot.x - 5, scale.y(at) - extent_of(text).height / 2}, text);
    }
    const std::string what =
        verdict.of_area ? "least area in view, mm\u00b2" : "largest area hidden, mm\u00b2";
    canvas.text({plot.centre().x(), plot.bottom() + 15},
                {.words = what, .size = text_size, .align = Align::centre});
    canvas.upward_text({4, plot.centre().y()},
                       {.words = "builds", .size = text_size, .align = Align::centre});
}

/// Names stand in a row each, so that lines close to each other do not write over one another.
void draw_marks(Canvas& canvas, const ToleratedVerdict& verdict, const Scale& scale)
{
    double key_x = plot.x;
    for (const Mark& mark : marks_of(verdict)) {
        const double x = scale.x(mark.figure);
        canvas.stroke(segment({x, plot.y}, {x, plot.bottom()}), mark.pen);
        const double y = plot.bottom() + 40;
        canvas.stroke(segment({key_x, y}, {key_x + 16, y}), mark.pen);
        const std::string words = mark.words + " " + typeset_area(mark.figure);
        key_x +=
            20 + canvas.text({key_x + 20, y - 5}, {.words = words, .size = text_size}).width + 14;
    }
}

} // namespace

Figure build_histogram(const ToleratedVerdict& verdict)
{
    const std::string title = "Builds: " + verdict.lamp + ", row " + verdict.row;
    const std::string share = share_of_builds_words(verdict.share);
    const std::string caption =
        title + ". " + share + " of " + counted(verdict.share.builds, "build") +
        " meet this row; " + figure_spread_words(verdict) + ". " +
        (verdict.of_area ? "Hatched builds have too little in view."
                         : "A build that hides anything does not meet the row.");
    const auto draw = [verdict, title, share](Canvas& canvas) {
        const Scale scale = scale_of(verdict);
        draw_title(canvas, {0, 0, width, 20}, title, share + " met");
        draw_bars(canvas, verdict, scale);
        draw_axes(canvas, verdict, scale);
        draw_marks(canvas, verdict, scale);
    };
    return {.drawing = {width, height, draw},
            .title = title,
            .caption = caption,
            .alt = caption,
            .is_picture = false};
}

} // namespace glim
