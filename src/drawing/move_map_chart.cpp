#include "drawing/move_map_chart.h"

#include "drawing/chart_ticks.h"
#include "drawing/colour_map.h"
#include "drawing/map_paint.h"
#include "drawing/picture_legend.h"
#include "words/chart_words.h"
#include "words/moved_lamp_words.h"
#include "words/numbers.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr double width = 400, height = 312;
constexpr Rect plot{56, 26, 250, 226};
constexpr double text_size = 8;
constexpr Colour mark_colour{20, 20, 30};

/// Where places stand on an axis, and where the cells around them end.
class Scale {
public:
    Scale(const std::vector<double>& places, double from, double to)
        : least_(places.front()), most_(places.back()), from_(from), to_(to)
    {
        edges_.push_back(least_);
        for (std::size_t i = 0; i + 1 < places.size(); ++i)
            edges_.push_back((places[i] + places[i + 1]) / 2);
        edges_.push_back(most_);
    }

    double at(double place) const
    {
        return most_ > least_ ? from_ + (to_ - from_) * (place - least_) / (most_ - least_)
                              : (from_ + to_) / 2;
    }
    double edge(std::size_t i) const
    {
        return most_ > least_ ? at(edges_[i]) : i == 0 ? from_ : to_;
    }
    double least() const { return least_; }
    double most() const { return most_; }

private:
    double least_, most_;
    double from_, to_;
    std::vector<double> edges_;
};

Rect rect_between(double x0, double x1, double y0, double y1)
{
    return {std::min(x0, x1), std::min(y0, y1), std::abs(x1 - x0), std::abs(y1 - y0)};
}

/// Margins are shown up to this share of what is asked; beyond it the colour stays.
constexpr double widest_margin = 0.5;

Colour colour_of(const QuickAnswer& answer)
{
    return diverging(std::clamp(answer.margin / widest_margin, -1.0, 1.0));
}

std::string axis_title(MoveWay way)
{
    const MoveWayWord& word = move_way_words[static_cast<std::size_t>(way)];
    switch (way) {
    case MoveWay::forward:
        return "rearward (below 0) and forward, mm";
    case MoveWay::outboard:
        return "inboard (below 0) and outboard, mm";
    case MoveWay::up:
        return "down (below 0) and up, mm";
    case MoveWay::turn:
        return "turned to look inboard (below 0) and outboard, deg";
    case MoveWay::tilt:
        return "tilted to look down (below 0) and up, deg";
    }
    return std::string(word.key);
}

void draw_cells(Canvas& canvas, const MoveMap& map, const Scale& x, const Scale& y)
{
    Path unmet;
    for (std::size_t j = 0; j < map.up.size(); ++j)
        for (std::size_t i = 0; i < map.across.size(); ++i) {
            const QuickAnswer& answer = map.answers[j * map.across.size() + i];
            const Rect cell = rect_between(x.edge(i), x.edge(i + 1), y.edge(j), y.edge(j + 1));
            const Path outline = path_of(cell);
            canvas.fill(outline, {.colour = colour_of(answer)});
            if (answer.outcome != Outcome::met)
                unmet.add(outline.lines().front().points, true);
        }
    hatch_outcome(canvas, unmet, Outcome::not_met);
    canvas.stroke(path_of(plot), {.width = 0.75});
}

void draw_axes(Canvas& canvas, const MoveMap& map, const Scale& x, const Scale& y)
{
    constexpr int most_ticks = 7;
    constexpr double tick = 3;
    const auto label = [](double at, Align align) {
        return Text{.words = typeset(rounded(at, 2)), .size = text_size, .align = align};
    };
    for (const double at : area_ticks_mm2(x.least(), x.most(), most_ticks)) {
        canvas.stroke(segment({x.at(at), plot.bottom()}, {x.at(at), plot.bottom() + tick}), {});
        canvas.text({x.at(at), plot.bottom() + tick + 1}, label(at, Align::centre));
    }
    for (const double at : area_ticks_mm2(y.least(), y.most(), most_ticks)) {
        const Text text = label(at, Align::right);
        canvas.stroke(segment({plot.x - tick, y.at(at)}, {plot.x, y.at(at)}), {});
        canvas.text({plot.x - tick - 2, y.at(at) - extent_of(text).height / 2}, text);
    }
    canvas.text({plot.centre().x(), plot.bottom() + 15},
                {.words = axis_title(map.ways[0]), .size = text_size, .align = Align::centre});
    canvas.upward_text(
        {6, plot.centre().y()},
        {.words = axis_title(map.ways[1]), .size = text_size, .align = Align::centre});
}

void draw_as_drawn(Canvas& canvas, const Point2& at)
{
    constexpr double arm = 5;
    Path cross;
    cross.move_to({at.x() - arm, at.y()}).line_to({at.x() + arm, at.y()});
    cross.move_to({at.x(), at.y() - arm}).line_to({at.x(), at.y() + arm});
    canvas.stroke(cross, {.colour = white, .width = 3.4});
    canvas.stroke(cross, {.colour = mark_colour, .width = 1.4});
}

void draw_least(Canvas& canvas, const Point2& at)
{
    canvas.stroke(circle_at(at, 5), {.colour = white, .width = 3.6});
    canvas.stroke(circle_at(at, 5), {.colour = mark_colour, .width = 1.6});
}

/// The bar of margins, to the right of the map.
void draw_margins(Canvas& canvas)
{
    const Rect bar{plot.right() + 14, plot.y + 14, 10, 120};
    constexpr int steps = 100;
    canvas.text({bar.x, plot.y}, {.words = "margin", .size = text_size});
    for (int i = 0; i < steps; ++i) {
        const double share = 1 - 2 * (i + 0.5) / steps;
        canvas.fill(
            path_of({bar.x, bar.y + bar.height * i / steps, bar.width, bar.height / steps + 0.2}),
            {.colour = diverging(share)});
    }
    canvas.stroke(path_of(bar), {.width = 0.6});
    const double most = widest_margin * 100;
    for (const double percent : {most, 0.0, -most}) {
        const Text text{.words = typeset(rounded(percent, 0) + " %" +
                                         (percent > 0   ? " and more"
                                          : percent < 0 ? " and less"
                                                        : "")),
                        .size = text_size};
        const double y = bar.y + bar.height * (1 - percent / most) / 2;
        canvas.text({bar.right() + 4, y - extent_of(text).height / 2}, text);
    }
}

/// Whether the least move goes only the map's two ways.
bool lies_on(const MoveMap& map, const LampMove& move)
{
    return std::all_of(move_way_words.begin(), move_way_words.end(), [&](const auto& word) {
        return word.way == map.ways[0] || word.way == map.ways[1] || move[word.way] == 0;
    });
}

void draw_legend_line(Canvas& canvas, bool hatched, bool with_least)
{
    constexpr double y = height - 22;
    double x = plot.x;
    const auto words = [&](const std::string& w) {
        x += canvas.text({x, y}, {.words = w, .size = text_size}).width + 14;
    };
    draw_as_drawn(canvas, {x + 5, y + 5});
    x += 14;
    words("as drawn");
    if (with_least) {
        draw_least(canvas, {x + 5, y + 5});
        x += 14;
        words("least move found");
    }
    if (!hatched)
        return;
    const Path sample = path_of({x, y, 16, 10});
    canvas.fill(sample, {.colour = diverging(-0.5)});
    hatch_outcome(canvas, sample, Outcome::not_met);
    canvas.stroke(sample, {.width = 0.5});
    x += 20;
    words("not met, or undecided");
}

} // namespace

Figure move_map_chart(const MoveMap& map, const MovedLampAnswer& answer, const Study& study)
{
    const std::string title = "Where moving " + study.lamps[answer.lamp].name + " is enough";
    std::string caption = title + ", looked at coarsely, by rays alone. Hatched moves do not "
                                  "surely meet every check; the colour is "
                                  "the margin of what decides, as a share of what is asked.";
    if (answer.least)
        caption += " " + moved_lamp_sentence(answer, study);
    const bool with_least = answer.least && lies_on(map, *answer.least);
    const bool hatched = std::any_of(map.answers.begin(), map.answers.end(),
                                     [](const auto& a) { return a.outcome != Outcome::met; });
    const auto draw = [map, answer, title, with_least, hatched](Canvas& canvas) {
        const Scale x(map.across, plot.x, plot.right());
        const Scale y(map.up, plot.bottom(), plot.y);
        draw_title(canvas, {0, 0, width, 20}, title, "");
        draw_cells(canvas, map, x, y);
        draw_axes(canvas, map, x, y);
        draw_margins(canvas);
        draw_as_drawn(canvas, {x.at(0), y.at(0)});
        if (with_least)
            draw_least(canvas,
                       {x.at((*answer.least)[map.ways[0]]), y.at((*answer.least)[map.ways[1]])});
        draw_legend_line(canvas, hatched, with_least);
    };
    return {.drawing = {width, height, draw},
            .title = title,
            .caption = caption,
            .alt = caption,
            .is_picture = false};
}

} // namespace glim
