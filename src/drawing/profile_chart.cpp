#include "drawing/profile_chart.h"

#include "drawing/chart_ticks.h"
#include "drawing/label_places.h"
#include "drawing/map_chart.h"
#include "drawing/profile.h"
#include "words/chart_words.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

using Subject = std::shared_ptr<const ChartSubject>;

constexpr Rect plot{46, 16, 380, 120};
constexpr double to_legend = 34; ///< from the plot; ticks' labels and words lie between
constexpr double headroom = 1.06;
constexpr std::size_t most_spans = 4; ///< told in words; all are drawn
/// A bar that is shorter could not be told from the line.
constexpr double least_bar = 2;

constexpr Colour error_colour{150, 160, 175}, mesh_colour{214, 219, 226}, line_colour{0, 50, 110},
    whole_colour{190, 120, 30};
constexpr Pen frame_pen{.colour = {90, 90, 90}, .width = 0.6};

/// "15 deg down"; "level".
std::string place_words(const Profile& p, const BearingSpeech& speech)
{
    const std::string both =
        p.along_h ? bearing_words({{}, p.at}, speech) : bearing_words({p.at, {}}, speech);
    const std::size_t comma = both.find(", ");
    return p.along_h ? both.substr(comma + 2) : both.substr(0, comma);
}

/// "V = -15"
std::string place_figure(const Profile& p)
{
    return std::string(p.along_h ? "V" : "H") + " = " + typeset_angle(p.at);
}

/// For labels, which have little room.
std::string short_words(Outcome outcome)
{
    return outcome == Outcome::proof_due ? "proof due" : std::string(words_of(outcome));
}

Text small(std::string words, Align align = Align::left)
{
    return {.words = std::move(words), .size = chart_text_size, .align = align};
}

/// Everything that the drawing needs, by value.
class ProfileChart {
public:
    ProfileChart(Subject subject, Profile profile)
        : s_(std::move(subject)), p_(std::move(profile)), scale_(scale()),
          legend_(entries(), chart_width - plot.x)
    {
    }

    double height() const { return plot.bottom() + to_legend + 4 + legend_.height() + 1; }

    void draw(Canvas& canvas) const
    {
        canvas.clipped(path_of(plot), [&] {
            for (const Span& span : p_.not_met)
                hatch(canvas,
                      {x_of(span.from), plot.y, x_of(span.to) - x_of(span.from), plot.height},
                      span.outcome);
            for (const auto& stretch : p_.stretches) {
                canvas.fill(band(stretch, true), {mesh_colour});
                canvas.fill(band(stretch, false), {error_colour});
                draw_proved(canvas, stretch);
            }
        });
        draw_axes(canvas);
        for (const auto& stretch : p_.stretches)
            draw_lines(canvas, stretch);
        draw_words(canvas);
        legend_.draw(canvas, {plot.x, plot.bottom() + to_legend + 4});
    }

private:
    ChartScale scale() const
    {
        if (s_->words().is_light)
            return s_->scale();
        double most = 0;
        for (const auto& stretch : p_.stretches)
            for (const ProfilePoint& p : stretch)
                most = std::max({most, p.figure, p.figure + error(p, true), p.threshold});
        return {.least = 0, .most = most > 0 ? headroom * most : 1};
    }
    double x_of(Angle a) const
    {
        return plot.x + (a - p_.first()) / (p_.last() - p_.first()) * plot.width;
    }
    double y_of(double figure) const
    {
        return plot.bottom() - std::max(0.0, scale_.share_of(figure)) * plot.height;
    }

    static void hatch(Canvas& canvas, const Rect& rect, Outcome outcome)
    {
        const HatchLook look = hatch_look(outcome);
        const bool fails = outcome == Outcome::not_met;
        const Colour lines = fails ? Colour{150, 90, 30} : Colour{110, 110, 110};
        canvas.fill(path_of(rect), {fails ? Colour{246, 233, 220} : Colour{240, 240, 240}});
        canvas.hatch(path_of(rect), {.colour = lines,
                                     .width = 0.5,
                                     .spacing = look.spacing,
                                     .slant = look.slant,
                                     .opacity = 0.8});
        canvas.stroke(path_of(rect), {.colour = lines, .width = 0.5});
    }

    static double error(const ProfilePoint& p, bool with_mesh)
    {
        return p.likely_error + (with_mesh ? p.mesh_error : 0);
    }

    void draw_proved(Canvas& canvas, const std::vector<ProfilePoint>& stretch) const
    {
        for (const ProfilePoint& p : stretch)
            if (p.proved && y_of(p.proved->first) - y_of(p.proved->second) >= least_bar)
                draw_bar(canvas, x_of(p.along), y_of(p.proved->first), y_of(p.proved->second));
    }

    Path band(const std::vector<ProfilePoint>& stretch, bool with_mesh) const
    {
        std::vector<Point2> around;
        around.reserve(2 * stretch.size());
        for (const ProfilePoint& p : stretch)
            around.emplace_back(x_of(p.along), y_of(p.figure + error(p, with_mesh)));
        for (auto p = stretch.rbegin(); p != stretch.rend(); ++p)
            around.emplace_back(x_of(p->along),
                                y_of(std::max(0.0, p->figure - error(*p, with_mesh))));
        return Path().add(std::move(around), true);
    }

    void draw_lines(Canvas& canvas, const std::vector<ProfilePoint>& stretch) const
    {
        std::vector<Point2> figure, threshold, whole;
        for (const ProfilePoint& p : stretch) {
            if (p.whole)
                whole.emplace_back(x_of(p.along), y_of(*p.whole));
            figure.emplace_back(x_of(p.along), y_of(p.figure));
            threshold.emplace_back(x_of(p.along), y_of(p.threshold));
        }
        if (whole.size() > 1)
            draw_whole_line(canvas, Path().add(std::move(whole), false));
        draw_threshold_line(canvas, Path().add(std::move(threshold), false));
        draw_figure_line(canvas, Path().add(std::move(figure), false));
    }
    static void draw_whole_line(Canvas& canvas, const Path& path)
    {
        canvas.stroke(path, {.colour = whole_colour, .width = 1});
    }
    static void draw_threshold_line(Canvas& canvas, const Path& path)
    {
        canvas.stroke(path, {.width = 1.1, .dashes = {5, 2}});
    }
    static void draw_bar(Canvas& canvas, double x, double low, double high)
    {
        constexpr double half_cap = 1.5;
        const Pen pen{.colour = {90, 90, 90}, .width = 0.6};
        canvas.stroke(segment({x, low}, {x, high}), pen);
        for (const double y : {low, high})
            canvas.stroke(segment({x - half_cap, y}, {x + half_cap, y}), pen);
    }
    static void draw_figure_line(Canvas& canvas, const Path& path)
    {
        canvas.stroke(path, {.colour = line_colour, .width = 1.5});
    }

    void draw_axes(Canvas& canvas) const
    {
        canvas.stroke(path_of(plot), frame_pen);
        for (const Angle a : angle_ticks(p_.first(), p_.last(), 11)) {
            const double x = x_of(a);
            canvas.stroke(segment({x, plot.bottom()}, {x, plot.bottom() + 3}), frame_pen);
            canvas.text({x, plot.bottom() + 6}, small(typeset_angle(a), Align::centre));
        }
        for (const double figure : scale_.ticks(7)) {
            const Text label = small(typeset_figure(figure), Align::right);
            const double y = y_of(figure);
            canvas.stroke(segment({plot.x - 3, y}, {plot.x, y}), frame_pen);
            canvas.text({plot.x - 5, y - extent_of(label).height / 2}, label);
        }
        canvas.text({plot.x, 2}, small(std::string(s_->words().bar) + ", at " + place_figure(p_)));
        const AxisEnds ends = p_.along_h ? ends_of_h(s_->speech) : ends_of_v();
        const std::string axis = p_.along_h ? "H, longitude" : "V, latitude";
        canvas.text(
            {plot.centre().x(), plot.bottom() + 18},
            small("\u2190 " + ends.negative + "   " + axis + "   " + ends.positive + " \u2192",
                  Align::centre));
    }

    /// The worst direction, the threshold beside the plot, and "not met" where it fits.
    void draw_words(Canvas& canvas) const
    {
        const ProfilePoint& last = p_.stretches.back().back();
        if (s_->limit) {
            const Text label = small(typeset(charted_words(s_->charted, *s_->limit)));
            canvas.text({plot.right() + 5, y_of(last.threshold) - extent_of(label).height / 2},
                        label);
        }
        LabelPlaces places(plot);
        if (s_->limit)
            places.take({plot.x, y_of(*s_->limit) - 1, plot.width, 2});
        if (p_.holds_worst)
            draw_worst_here(canvas, places);
        for (const Span& span : p_.not_met) {
            const Text label{.words = short_words(span.outcome),
                             .size = chart_text_size,
                             .bold = true,
                             .halo = white};
            const Extent size = extent_of(label);
            const double middle = (x_of(span.from) + x_of(span.to)) / 2;
            if (size.width + 4 > x_of(span.to) - x_of(span.from))
                continue;
            std::vector<Point2> at;
            for (const double y : {plot.y + 4, plot.bottom() - 16, plot.y + 18, plot.centre().y()})
                at.emplace_back(middle - size.width / 2, y);
            if (const auto free = places.first_free(at, size))
                canvas.text(*free, label);
        }
    }

    void draw_worst_here(Canvas& canvas, LabelPlaces& places) const
    {
        const Angle along = p_.along_h ? s_->worst.h : s_->worst.v;
        const Point2 at(x_of(along), y_of(s_->worst_figure));
        const double r = worst_radius + 1;
        places.take({at.x() - r, at.y() - r, 2 * r, 2 * r});
        const Text label{.words = typeset(charted_words(s_->charted, s_->worst_figure)),
                         .size = chart_text_size,
                         .bold = true,
                         .halo = white};
        const Extent size = extent_of(label);
        draw_worst(canvas, at);
        if (const auto free = places.first_free(places_around(at, size, r + 2), size))
            canvas.text(*free, label);
    }

    std::vector<LegendEntry> entries() const
    {
        const auto level = [](const Rect& r) {
            return segment({r.x, r.centre().y()}, {r.right(), r.centre().y()});
        };
        std::vector<LegendEntry> all{
            {[level](Canvas& c, const Rect& r) { draw_figure_line(c, level(r)); },
             std::string(s_->words().line)},
            {[level](Canvas& c, const Rect& r) { draw_threshold_line(c, level(r)); },
             std::string(s_->words().limit)}};
        if (s_->charted == Charted::light_left)
            all.push_back({[level](Canvas& c, const Rect& r) { draw_whole_line(c, level(r)); },
                           "with nothing in the way"});
        add_band_entries(all);
        for (const OutcomeWord& w : outcome_words)
            if (std::any_of(p_.not_met.begin(), p_.not_met.end(),
                            [&](const Span& span) { return span.outcome == w.outcome; }))
                all.push_back(
                    {[outcome = w.outcome](Canvas& c, const Rect& r) { hatch(c, r, outcome); },
                     short_words(w.outcome)});
        if (p_.holds_worst)
            all.push_back({[](Canvas& c, const Rect& r) { draw_worst(c, r.centre()); },
                           typeset(s_->worst_words)});
        return all;
    }

    void add_band_entries(std::vector<LegendEntry>& all) const
    {
        if (s_->charted == Charted::own_light)
            return;
        all.push_back({[](Canvas& c, const Rect& r) { c.fill(path_of(r), {error_colour}); },
                       "likely error of computing"});
        if (!s_->words().is_light)
            all.push_back(
                {[](Canvas& c, const Rect& r) { draw_bar(c, r.centre().x(), r.bottom(), r.y); },
                 "proved bounds"});
        all.push_back({[](Canvas& c, const Rect& r) { c.fill(path_of(r), {mesh_colour}); },
                       "and how far the meshes may be off"});
    }

    Subject s_;
    Profile p_;
    ChartScale scale_;
    Legend legend_;
};

const ProfilePoint& extreme(const Profile& p, bool more_is_better)
{
    const ProfilePoint* found = &p.stretches.front().front();
    for (const auto& stretch : p.stretches)
        for (const ProfilePoint& point : stretch)
            if (more_is_better ? point.figure < found->figure : point.figure > found->figure)
                found = &point;
    return *found;
}

std::string found_words(const ChartSubject& s, const Profile& p)
{
    const ProfilePoint& e = extreme(p, s.words().more_is_better);
    const Bearing at = p.along_h ? Bearing{e.along, p.at} : Bearing{p.at, e.along};
    std::string words = std::string(s.words().more_is_better ? "least " : "most ") +
                        charted_words(s.charted, e.figure) + ", " + bearing_words(at, s.speech);
    const std::size_t told = std::min(p.not_met.size(), most_spans);
    for (std::size_t i = 0; i < told; ++i) {
        const Span& span = p.not_met[i];
        const FieldRectangle r = p.along_h ? FieldRectangle{span.from, span.to, p.at, p.at}
                                           : FieldRectangle{p.at, p.at, span.from, span.to};
        words += "; " + short_words(span.outcome) + " at " + range_words(r, s.speech);
    }
    if (p.not_met.size() > told)
        words += "; and in " + counted(p.not_met.size() - told, "further part");
    return words + ".";
}

constexpr std::string_view what_bands_are =
    " Dark band: likely error of computing. Light band: how far the meshes may be off, too, an "
    "estimate; narrower where it was counted by what is in the way there. Bars: bounds that are "
    "proved, in the directions where they were asked.";
constexpr std::string_view what_light_bands_are =
    " In decades. The thin line is the lamp's own light, with nothing in the way. Bands: likely "
    "error of the share in view, dark by computing, light by the meshes; how the lit face is "
    "bright "
    "is assumed and not in them.";

Figure figure_of(const Subject& s, const Profile& p)
{
    const auto chart = std::make_shared<const ProfileChart>(s, p);
    const std::string what(s->words().title);
    const std::string where =
        std::string(p.along_h ? "along H, " : "along V, ") + place_words(p, s->speech);
    Figure f;
    f.title = what + " " + where;
    f.caption = what + " of " + s->lamp + " " + where + ": " + found_words(*s, p) +
                std::string(s->words().is_light ? what_light_bands_are : what_bands_are);
    f.alt =
        "Profile of " + std::string(s->words().in_alt) + " " + where + ": " + found_words(*s, p);
    f.drawing = {chart_width, chart->height(), [chart](Canvas& canvas) { chart->draw(canvas); }};
    return f;
}

} // namespace

std::vector<Figure> profile_charts(const Subject& subject, const LampLook& look)
{
    const Profile level = profile_along_h(*subject, look, Angle());
    const Profile at_worst = profile_along_h(*subject, look, subject->worst.v);
    const Profile upward = profile_along_v(*subject, look, subject->worst.h);
    std::vector<Figure> figures;
    if (!level.empty())
        figures.push_back(figure_of(subject, level));
    if (!at_worst.empty() && at_worst.at != level.at)
        figures.push_back(figure_of(subject, at_worst));
    if (!upward.empty())
        figures.push_back(figure_of(subject, upward));
    return figures;
}

} // namespace glim
