#include "remedy/sight_curves.h"

#include "machine/stop.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace glim {

namespace {

constexpr double endless = std::numeric_limits<double>::infinity();
/// Places along a curve.
constexpr double curve_step_mm = 10;
/// Places across, where limits over all of them are looked for.
constexpr double across_step_mm = 20;
/// Short of the end of the drawing, so that a section there is not lost by rounding.
constexpr double inside_mm = 1e-6;

/// The sketch's own places: x ahead, y from the median plane, z above the ground.
class SketchSpace {
public:
    SketchSpace(const KeepClearSet& set, const LampSketch& sketch)
        : set_(set), lateral_(in_mm(sketch.lateral)), above_(in_mm(sketch.above)),
          ahead_(in_mm(sketch.ahead)), aside_(1.5 * in_mm(*sketch.study.vehicle.overall_width))
    {
    }

    struct Limits {
        double bottom = endless, top = -endless;
        bool any() const { return bottom <= top; }
        void add(const Limits& other)
        {
            bottom = std::min(bottom, other.bottom);
            top = std::max(top, other.top);
        }
    };
    Limits at(double x, double y) const
    {
        const auto column = set_.column({x, y - lateral_});
        return column ? Limits{in_mm(column->bottom) + above_, in_mm(column->top) + above_}
                      : Limits{};
    }
    Limits over_all(double x) const
    {
        Limits all;
        for (double y = -aside_; y <= aside_; y += across_step_mm)
            all.add(at(x, y));
        all.add(at(x, lateral_));
        return all;
    }
    std::vector<std::vector<Point2>> plan() const
    {
        const double y = lateral_;
        std::vector<std::vector<Point2>> outlines = set_.plan({{-ahead_, -aside_ - y},
                                                               {ahead_, -aside_ - y},
                                                               {ahead_, aside_ - y},
                                                               {-ahead_, aside_ - y}},
                                                              Length());
        for (std::vector<Point2>& outline : outlines)
            for (Point2& p : outline)
                p = Point2(p.y() + y, p.x());
        return outlines;
    }
    double ahead() const { return ahead_; }
    double aside() const { return aside_; }

private:
    const KeepClearSet& set_;
    double lateral_, above_, ahead_, aside_;
};

/// Below there and back above, as one closed line; nothing where the space is not met.
template <class Along>
std::vector<Point2> ring(double first, double last, Along along)
{
    std::vector<Point2> below, above;
    const int steps = static_cast<int>(std::ceil((last - first) / curve_step_mm));
    for (int i = 0; i <= steps; ++i) {
        const double at = std::min(last, first + i * curve_step_mm);
        const SketchSpace::Limits limits = along(at);
        if (!limits.any())
            continue;
        below.emplace_back(at, limits.bottom);
        above.emplace_back(at, limits.top);
    }
    below.insert(below.end(), above.rbegin(), above.rend());
    return below;
}

std::string millimetres_words(double mm) { return std::to_string(std::lround(mm)); }

} // namespace

std::vector<LimitCurve> limit_curves(const KeepClearSet& set, const LampSketch& sketch,
                                     const std::stop_token& stop)
{
    const SketchSpace space(set, sketch);
    const double ahead = space.ahead() - inside_mm;
    const auto heed_stop = [&stop] {
        if (stop.stop_requested())
            throw Stopped();
    };
    std::vector<LimitCurve> curves;
    const auto add = [&](SightView view, std::string label, std::vector<Point2> points) {
        if (points.size() > 2)
            curves.push_back({.row = 0,
                              .view = view,
                              .label = std::move(label),
                              .points = std::move(points),
                              .closed = true});
    };
    for (std::vector<Point2>& outline : space.plan())
        add(SightView::plan, "at the heights of the lens", std::move(outline));
    add(SightView::side, "wherever across", ring(-space.ahead(), ahead, [&](double x) {
            heed_stop();
            return space.over_all(x);
        }));
    add(SightView::side, "on the median plane", ring(-space.ahead(), ahead, [&](double x) {
            heed_stop();
            return space.at(x, 0);
        }));
    for (const double share : front_shares) {
        const double x = share * space.ahead() - inside_mm;
        add(SightView::front, millimetres_words(x) + " ahead",
            ring(-space.aside(), space.aside(), [&](double y) {
                heed_stop();
                return space.at(x, y);
            }));
    }
    return curves;
}

std::vector<NoseReach> nose_reaches(const KeepClearSet& set, const LampSketch& sketch,
                                    const Box& lens)
{
    const std::vector<std::vector<Point2>> outlines = SketchSpace(set, sketch).plan();
    const double half = in_mm(*sketch.study.vehicle.overall_width) / 2;
    const double step = in_mm(nose_step);
    std::vector<NoseReach> reaches;
    for (double y = std::floor((lens.least.y() - inside_mm) / step) * step; y >= -half; y -= step) {
        double nearest = endless;
        for (const std::vector<Point2>& outline : outlines)
            for (std::size_t i = 0; i < outline.size(); ++i) {
                const Point2& a = outline[i];
                const Point2& b = outline[(i + 1) % outline.size()];
                if ((a.x() < y) == (b.x() < y))
                    continue;
                nearest =
                    std::min(nearest, a.y() + (y - a.x()) / (b.x() - a.x()) * (b.y() - a.y()));
            }
        reaches.push_back({millimetres(y), {}});
        if (nearest < in_mm(sketch.ahead))
            reaches.back().ahead = millimetres(nearest);
    }
    return reaches;
}

} // namespace glim
