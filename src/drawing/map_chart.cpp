#include "drawing/map_chart.h"

#include "drawing/label_places.h"
#include "words/chart_words.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double to_bar = 12;   ///< from a map to its bar
constexpr double to_legend = 6; ///< from a map to its legend
constexpr double least_legend_width = 150;
constexpr double label_size = 8;

/// A map with all that its drawing needs, by value.
class MapChart {
public:
    MapChart(std::shared_ptr<const ChartSubject> subject, MapFrame frame, MapColours colours)
        : s_(std::move(subject)), frame_(std::move(frame)), colours_(std::move(colours)),
          legend_at_(place_of_legend()), legend_(entries(), chart_width - legend_at_.x())
    {
    }

    double height() const
    {
        return std::max(frame_.whole.bottom(), legend_at_.y() + legend_.height()) + 1;
    }

    void draw(Canvas& canvas) const
    {
        frame_.draw_under(canvas);
        const Path outline = path_on(frame_, s_->outline);
        paint_directions(canvas, frame_, outline, colours_.painter);
        if (colours_.on_top)
            colours_.on_top(canvas, frame_);
        if (colours_.marks_outcome)
            for (const ChartSubject::Region& r : s_->regions)
                hatch_outcome(canvas, path_on(frame_, r.lines), r.outcome);
        frame_.draw_over(canvas);
        draw_outline(canvas, rim_on(frame_, s_->outline));
        draw_thin_parts(canvas);
        draw_threshold(canvas, path_on(frame_, s_->threshold));
        if (colours_.letters)
            colours_.letters(canvas, frame_);
        draw_marks(canvas);
        if (colours_.bar)
            draw_colour_bar(canvas, *colours_.bar,
                            {frame_.whole.right() + to_bar, frame_.plot.y,
                             colour_bar_width - to_bar, frame_.plot.height});
        legend_.draw(canvas, legend_at_);
    }

private:
    /// Beside a map that leaves enough room there, else below it.
    Point2 place_of_legend() const
    {
        const double beside =
            frame_.whole.right() + (colours_.bar ? colour_bar_width : 0) + 2 * to_bar;
        if (chart_width - beside >= least_legend_width)
            return {beside, frame_.plot.y};
        return {frame_.plot.x, frame_.whole.bottom() + to_legend};
    }

    /// Lines of directions that a field has beside its areas.
    void draw_thin_parts(Canvas& canvas) const
    {
        for (const FieldRectangle& r : s_->field.rectangles)
            if (r.h_least == r.h_most || r.v_least == r.v_most) {
                const BearingLine line{{{r.h_least, r.v_least}, {r.h_most, r.v_most}}, false};
                draw_outline(canvas, path_on(frame_, std::span(&line, 1)));
            }
    }

    void draw_marks(Canvas& canvas) const
    {
        for (const Bearing& b : s_->figures.between)
            draw_found_between(canvas, frame_.point_of(b));
        const Point2 worst = frame_.point_of(s_->worst);
        draw_worst(canvas, worst);
        LabelPlaces places(frame_.plot);
        for (const Rect& label : frame_.labels)
            places.take(label);
        const double r = worst_radius + 1;
        places.take({worst.x() - r, worst.y() - r, 2 * r, 2 * r});
        const Text figure{
            .words = colours_.worst_label, .size = label_size, .bold = true, .halo = white};
        const Extent size = extent_of(figure);
        if (!figure.words.empty())
            if (const auto at = places.first_free(places_around(worst, size, r + 2), size))
                canvas.text(*at, figure);
        draw_threshold_label(canvas, places);
    }

    void draw_threshold_label(Canvas& canvas, LabelPlaces& places) const
    {
        if (colours_.threshold_label.empty())
            return;
        const Text label{
            .words = colours_.threshold_label, .size = label_size, .bold = true, .halo = white};
        const Extent size = extent_of(label);
        std::vector<Point2> candidates;
        const Path lines = path_on(frame_, s_->threshold);
        for (const double share : {0.5, 0.35, 0.65, 0.2, 0.8, 0.05, 0.95})
            for (const Path::Line& line : lines.lines()) {
                const double last = static_cast<double>(line.points.size() - 1);
                const Point2& p = line.points[static_cast<std::size_t>(share * last)];
                for (const double aside : {0.0, -0.5, 0.5})
                    candidates.emplace_back(p.x() - size.width / 2 + aside * (size.width + 6),
                                            p.y() - size.height / 2);
            }
        if (const auto at = places.first_free(candidates, size))
            canvas.text(*at, label);
    }

    std::vector<LegendEntry> entries() const
    {
        std::vector<LegendEntry> all = colours_.entries;
        if (!s_->threshold.empty())
            all.push_back({[](Canvas& canvas, const Rect& r) {
                               draw_threshold(canvas, segment({r.x, r.centre().y()},
                                                              {r.right(), r.centre().y()}));
                           },
                           typeset(s_->threshold_words)});
        if (colours_.marks_outcome)
            for (const ChartSubject::Region& region : s_->regions)
                all.push_back({[outcome = region.outcome](Canvas& canvas, const Rect& r) {
                                   canvas.fill(path_of(r), {{150, 150, 150}});
                                   hatch_outcome(canvas, path_of(r), outcome);
                               },
                               typeset(region.words)});
        all.push_back({[](Canvas& canvas, const Rect& r) { draw_worst(canvas, r.centre()); },
                       typeset(s_->worst_words)});
        if (!s_->figures.between.empty())
            all.push_back(
                {[](Canvas& canvas, const Rect& r) { draw_found_between(canvas, r.centre()); },
                 "not met, found between the directions of the grid"});
        return all;
    }

    std::shared_ptr<const ChartSubject> s_;
    MapFrame frame_;
    MapColours colours_;
    Point2 legend_at_;
    Legend legend_;
};

} // namespace

Drawing map_chart(std::shared_ptr<const ChartSubject> subject, const MapFrame& frame,
                  const MapColours& colours)
{
    const auto chart = std::make_shared<const MapChart>(std::move(subject), frame, colours);
    return {chart_width, chart->height(), [chart](Canvas& canvas) { chart->draw(canvas); }};
}

} // namespace glim
