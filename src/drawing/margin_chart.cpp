#include "drawing/margin_chart.h"

#include "drawing/picture_legend.h"
#include "words/chart_words.h"
#include "words/margin_words.h"
#include "words/numbers.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr double width = 400;
constexpr double title_height = 20, scale_height = 14, row_height = 13, bar_height = 7;
constexpr double label_width = 92, zero_x = 196, half_width = 92, gain_x = 322;
constexpr double text_size = 8, small_size = 7;
/// More would not fit a page.
constexpr std::size_t most_surfaces = 8;
constexpr Colour room_colour{58, 96, 150}, endless_colour{182, 202, 226}, short_colour{200, 70, 0},
    line_colour{205, 205, 210}, quiet_text{90, 90, 96};

struct Rows {
    std::vector<SurfaceMargin> margins; ///< by surface, ways in order
    Length reach;
    bool met = false;
};

class MarginBars {
public:
    MarginBars(Canvas& canvas, const Rows& rows, const Study& study)
        : canvas_(canvas), rows_(rows), study_(study)
    {
    }

    void draw();

private:
    double x_of(Length move) const { return zero_x + half_width * (move / rows_.reach); }
    void draw_scale(double bottom);
    void draw_row(double y, const SurfaceMargin& margin);
    void draw_side(double y, double sign, const std::optional<Length>& change);
    void draw_key(double y);

    Canvas& canvas_;
    const Rows& rows_;
    const Study& study_;
};

std::size_t surfaces_in(const std::vector<SurfaceMargin>& margins)
{
    std::size_t count = 0;
    for (std::size_t i = 0; i < margins.size(); ++i)
        count += i == 0 || margins[i].surface != margins[i - 1].surface ? 1 : 0;
    return count;
}

void MarginBars::draw_scale(double bottom)
{
    for (const double share : {-1.0, -0.5, 0.0, 0.5, 1.0}) {
        const double x = x_of(share * rows_.reach);
        canvas_.stroke(segment({x, title_height + scale_height}, {x, bottom}),
                       {.colour = share == 0 ? black : line_colour, .width = 0.6});
        canvas_.text({x, title_height}, {.words = rounded(std::abs(share) * in_mm(rows_.reach), 2) +
                                                  (share == 1 ? " mm" : ""),
                                         .size = small_size,
                                         .colour = quiet_text,
                                         .align = Align::centre});
    }
}

/// Where it is met, all the way that it stays so; else the way until it would be.
void MarginBars::draw_side(double y, double sign, const std::optional<Length>& change)
{
    if (!change && !rows_.met)
        return;
    const double end = x_of(sign * change.value_or(rows_.reach));
    const Rect bar{std::min(end, zero_x), y + (row_height - bar_height) / 2, std::abs(end - zero_x),
                   bar_height};
    canvas_.fill(path_of(bar), {.colour = !rows_.met ? short_colour
                                          : change   ? room_colour
                                                     : endless_colour});
    if (change)
        canvas_.text({end + 3 * sign, y + 1.5}, {.words = rounded(in_mm(*change), 2),
                                                 .size = small_size,
                                                 .align = sign > 0 ? Align::left : Align::right});
}

void MarginBars::draw_row(double y, const SurfaceMargin& margin)
{
    const std::string senses =
        std::string(sense_of(margin.way, false)) + " | " + std::string(sense_of(margin.way, true));
    canvas_.text({10, y + 1}, {.words = senses, .size = small_size, .colour = quiet_text});
    draw_side(y, -1, margin.against);
    draw_side(y, 1, margin.along);
    canvas_.text({gain_x, y + 1},
                 {.words = typeset(margin_gain_words(margin)), .size = small_size});
}

void MarginBars::draw_key(double y)
{
    std::vector<Swatch> entries;
    if (rows_.met)
        entries = {{room_colour, {}, "met up to there"},
                   {endless_colour, {}, "met as far as looked"}};
    else
        entries = {{short_colour, {}, "to go until it is met"}};
    draw_legend(canvas_, {2, y, width - 4, 12}, entries);
}

void MarginBars::draw()
{
    canvas_.text({gain_x, title_height},
                 {.words = "loses", .size = small_size, .colour = quiet_text});
    double y = title_height + scale_height;
    draw_scale(y +
               row_height * static_cast<double>(rows_.margins.size() + surfaces_in(rows_.margins)));
    for (std::size_t i = 0; i < rows_.margins.size(); ++i) {
        const SurfaceMargin& margin = rows_.margins[i];
        if (i == 0 || margin.surface != rows_.margins[i - 1].surface) {
            canvas_.text({2, y + 1}, {.words = study_.surfaces[margin.surface].name,
                                      .size = text_size,
                                      .bold = true,
                                      .width = label_width,
                                      .most_lines = 1});
            y += row_height;
        }
        draw_row(y, margin);
        y += row_height;
    }
    draw_key(y + 4);
}

Figure chart_of(const Rows& rows, const std::string& check, const Study& study)
{
    const std::string title = check + ": " +
                              (rows.met ? "how far each surface may move"
                                        : "how far one surface alone would have to move");
    const double rows_height =
        row_height * static_cast<double>(rows.margins.size() + surfaces_in(rows.margins));
    const std::string caption =
        title +
        (rows.met ? ", mm either way until the check is not met any more; pale: that does not "
                    "happen within "
                  : ", mm until the check is met; a way without a bar does not mend it within ") +
        rounded(in_mm(rows.reach), 2) + " mm.";
    std::string alt = caption;
    const MarginFindings reach{
        .wanted = {.checks = {}, .step = {}, .reach = rows.reach}, .checks = {}, .idle = {}};
    for (const SurfaceMargin& margin : rows.margins)
        alt += " " + study.surfaces[margin.surface].name + ", " +
               std::string(words_of(margin.way)) + ": " + margin_moves_words(margin, reach) + ".";
    const auto draw = [rows, study, title](Canvas& canvas) {
        draw_title(canvas, {0, 0, width, title_height}, title, "");
        MarginBars(canvas, rows, study).draw();
    };
    return {.drawing = {width, title_height + scale_height + rows_height + 20, draw},
            .title = title,
            .caption = caption,
            .alt = alt,
            .is_picture = false};
}

} // namespace

std::vector<Figure> margin_charts(const CheckMargins& check, const MarginFindings& found,
                                  const Study& study)
{
    std::vector<Figure> charts;
    const bool any =
        std::any_of(check.margins.begin(), check.margins.end(),
                    [](const SurfaceMargin& margin) { return margin.along || margin.against; });
    if (!any)
        return charts;
    Rows rows{{}, found.wanted.reach, check.met};
    const auto finish = [&] {
        if (!rows.margins.empty())
            charts.push_back(chart_of(rows, study.checks[check.check].name, study));
        rows.margins.clear();
    };
    for (const SurfaceMargin& margin : check.margins) {
        const bool is_new = rows.margins.empty() || rows.margins.back().surface != margin.surface;
        if (is_new && surfaces_in(rows.margins) == most_surfaces)
            finish();
        rows.margins.push_back(margin);
    }
    finish();
    return charts;
}

} // namespace glim
