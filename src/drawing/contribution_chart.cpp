#include "drawing/picture_legend.h"
#include "drawing/tolerance_charts.h"
#include "words/chart_words.h"
#include "words/numbers.h"
#include "words/tolerance_words.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double width = 400;
constexpr double top = 26, row_height = 15, bar_height = 9;
constexpr double label_width = 150, bars_x = 158, bars_width = 176;
constexpr double text_size = 8;
constexpr Colour alone_colour{58, 96, 150}, total_colour{182, 202, 226}, origin_colour{90, 90, 96};

double x_of(double share) { return bars_x + bars_width * std::clamp(share, 0.0, 1.0); }

void draw_scale(Canvas& canvas, double bottom)
{
    for (const int percent : {0, 25, 50, 75, 100}) {
        const double x = x_of(percent / 100.0);
        canvas.stroke(segment({x, top}, {x, bottom}),
                      {.colour = {205, 205, 210}, .width = percent == 0 ? 0.9 : 0.5});
        canvas.text(
            {x, bottom + 2},
            {.words = typeset_figure(percent) + " %", .size = text_size, .align = Align::centre});
    }
}

void draw_row(Canvas& canvas, double y, const std::string& name, bool is_way,
              const VarianceShare& share)
{
    canvas.text({is_way ? 12.0 : 2.0, y}, {.words = name,
                                           .size = text_size,
                                           .bold = !is_way,
                                           .width = label_width - (is_way ? 10 : 0),
                                           .most_lines = 1});
    const double bar_y = y + 1;
    const auto bar = [&](double value, double inset) {
        return path_of(
            {bars_x, bar_y + inset, std::max(0.4, x_of(value) - bars_x), bar_height - 2 * inset});
    };
    canvas.fill(bar(share.total.value, 0), {.colour = total_colour});
    canvas.fill(bar(share.first.value, 2), {.colour = alone_colour});
    const double middle = bar_y + bar_height / 2;
    canvas.stroke(segment({x_of(share.total.low), middle}, {x_of(share.total.high), middle}),
                  {.colour = origin_colour, .width = 1});
    canvas.text({x_of(1) + 8, y},
                {.words = rounded(100 * std::clamp(share.total.value, 0.0, 1.0), 0) + " %",
                 .size = text_size});
}

void draw_key(Canvas& canvas, double y)
{
    double x = 2;
    for (const auto& [colour, words] : {std::pair(alone_colour, "by itself"),
                                        {total_colour, "with others (figures at the right)"}}) {
        canvas.fill(path_of({x, y + 1, 10, 8}), {.colour = colour});
        x += 14 + canvas.text({x + 14, y}, {.words = words, .size = text_size}).width + 12;
    }
    canvas.stroke(segment({x, y + 5}, {x + 14, y + 5}), {.colour = origin_colour, .width = 1});
    canvas.text({x + 18, y}, {.words = "95 % of that", .size = text_size});
}

} // namespace

Figure contribution_chart(const ToleratedVerdict& verdict, const ToleranceFindings& found,
                          const Study& study)
{
    const std::string title = "Contributions: " + verdict.lamp + ", row " + verdict.row;
    const std::string caption =
        title + ". What each tolerance does to the variance of " +
        (verdict.of_area ? "the least area in view" : "the largest hidden area") +
        ": what would vanish if it alone were held, and what would remain if all others were.";
    std::string alt = caption;
    for (std::size_t c = 0; c < verdict.contributions.size(); ++c)
        alt += " " + contributor_words(found.contributors[c], study) + ": " +
               variance_words(verdict.contributions[c].total) + ".";
    const double bottom = top + row_height * static_cast<double>(verdict.contributions.size());
    const auto draw = [verdict, found, study, title, bottom](Canvas& canvas) {
        draw_title(canvas, {0, 0, width, 20}, title, "");
        draw_scale(canvas, bottom);
        for (std::size_t c = 0; c < verdict.contributions.size(); ++c)
            draw_row(canvas, top + row_height * static_cast<double>(c) + 2,
                     contributor_label(found.contributors[c], study),
                     found.contributors[c].kind == ContributorKind::way, verdict.contributions[c]);
        draw_key(canvas, bottom + 18);
    };
    return {.drawing = {width, bottom + 34, draw},
            .title = title,
            .caption = caption,
            .alt = alt,
            .is_picture = false};
}

} // namespace glim
