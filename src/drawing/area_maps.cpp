#include "drawing/area_maps.h"

#include "drawing/colour_map.h"
#include "drawing/map_chart.h"
#include "words/capitalised.h"
#include "words/chart_words.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

using Subject = std::shared_ptr<const ChartSubject>;

/// Dark is what hardly anybody sees, whether the figure is what is in view or what is hidden.
MapColours area_colours(const Subject& s)
{
    const double most = s->most_mm2() > 0 ? s->most_mm2() : 1;
    MapColours colours;
    colours.bar = {.title = s->of_area ? "in view, mm\u00b2" : "hidden, mm\u00b2",
                   .least = 0,
                   .most = most,
                   .colour = [most, of_area = s->of_area](double mm2) {
                       return cividis(of_area ? mm2 / most : 1 - mm2 / most);
                   }};
    if (s->of_area)
        colours.bar->threshold = s->asked_mm2;
    colours.threshold_label = typeset(s->threshold_label);
    colours.worst_label = typeset_area(s->worst_mm2);
    colours.painter = [s, colour = colours.bar->colour](const Bearing& b) {
        const auto mm2 = s->figures.grid.value_at(b, s->figures.areas_mm2);
        return mm2 ? std::optional(colour(*mm2)) : std::nullopt;
    };
    return colours;
}

MapColours margin_colours(const Subject& s)
{
    const auto& margins = s->figures.margins_mm2;
    const auto [least, most] = std::minmax_element(margins.begin(), margins.end());
    // What is asked is a scale that all lamps under one rule share.
    const double farthest = std::max({-*least, *most, 1e-3});
    const double end = s->of_area && s->asked_mm2 > 0 ? s->asked_mm2 : farthest;
    MapColours colours;
    colours.bar = {.title = "margin, mm\u00b2",
                   .least = -end,
                   .most = end,
                   .colour = [end](double mm2) { return diverging(mm2 / end); },
                   .threshold = 0,
                   .open_below = *least<-end, .open_above = *most> end};
    colours.threshold_label = "margin 0";
    // Results count the margin of a share from nothing hidden: another figure than the map's.
    if (s->of_area)
        colours.worst_label = typeset_area(s->worst_margin_mm2);
    colours.painter = [s, colour = colours.bar->colour](const Bearing& b) {
        const auto mm2 = s->figures.grid.value_at(b, s->figures.margins_mm2);
        return mm2 ? std::optional(colour(*mm2)) : std::nullopt;
    };
    return colours;
}

std::string quantity(const ChartSubject& s) { return s.of_area ? "Area in view" : "Hidden area"; }

/// What every map of areas says at its end.
std::string findings_words(const ChartSubject& s)
{
    return s.worst_words + "; met in " + s.coverage_words + ".";
}

std::string hatching_words(const ChartSubject& s)
{
    return s.regions.empty() ? "" : " Hatched where it is not met.";
}

} // namespace

Figure area_map(const Subject& s)
{
    const AxisEnds h = ends_of_h(s->speech);
    Figure f;
    f.title = quantity(*s) + " by direction";
    f.caption = quantity(*s) + " of " + s->lamp + ", from every direction asked; " + h.positive +
                " to the right, for lamps of either side. Thick line: " + s->threshold_words + "." +
                hatching_words(*s) + " " + capitalised(findings_words(*s));
    f.alt = "Map of " + std::string(s->of_area ? "visible" : "hidden") +
            " area by longitude and latitude: " + findings_words(*s);
    f.drawing = map_chart(s, plane_frame(s->field, s->speech, map_room), area_colours(s));
    return f;
}

Figure polar_area_map(const Subject& s)
{
    Figure f;
    f.title = quantity(*s) + " about the axis";
    f.caption = "The same about the axis of reference, which lies where the thin lines cross: "
                "directions stand as far from it as they are in degrees, a ring every 30 deg, so "
                "that none looks larger than it is along them. " +
                capitalised(findings_words(*s));
    f.alt = "Polar map of " + std::string(s->of_area ? "visible" : "hidden") +
            " area: " + findings_words(*s);
    f.drawing = map_chart(s, polar_frame(s->field, s->speech, map_room), area_colours(s));
    return f;
}

Figure margin_map(const Subject& s)
{
    Figure f;
    f.title = "Margin by direction";
    f.caption = "How much more area is in view than asked (blue), or how much less (orange). Thick "
                "line: " +
                s->threshold_words + "." + hatching_words(*s);
    if (!s->of_area)
        f.caption = "How much less is hidden than is allowed (blue), or how much more (orange). "
                    "Thick line: " +
                    s->threshold_words + "." + hatching_words(*s);
    f.alt = "Map of the margin by longitude and latitude: " + findings_words(*s);
    f.drawing = map_chart(s, plane_frame(s->field, s->speech, map_room), margin_colours(s));
    return f;
}

} // namespace glim
