#include "drawing/value_maps.h"

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
MapColours value_colours(const Subject& s)
{
    const ChartScale scale = s->scale();
    MapColours colours;
    colours.bar = ColourBar{.title = std::string(s->words().bar),
                            .scale = scale,
                            .colour = [scale, more = s->words().more_is_better](double figure) {
                                const double share = scale.share_of(figure);
                                return cividis(more ? share : 1 - share);
                            }};
    colours.bar->threshold = s->limit;
    colours.bar->open_below = s->words().is_light && s->least() < scale.least;
    colours.threshold_label = typeset(s->threshold_label);
    colours.worst_label = typeset(charted_words(s->charted, s->worst_figure));
    colours.painter = [s, colour = colours.bar->colour](const Bearing& b) {
        const auto figure = s->figures.grid.value_at(b, s->figures.values);
        return figure && !std::isnan(*figure) ? std::optional(colour(*figure)) : std::nullopt;
    };
    return colours;
}

MapColours margin_colours(const Subject& s)
{
    const auto& margins = s->figures.margins;
    const auto [least, most] = std::minmax_element(margins.begin(), margins.end());
    // What is asked is a scale that all lamps under one rule share.
    const double farthest = std::max({-*least, *most, 1e-3});
    const double end = s->of_area() && *s->limit > 0 ? *s->limit : farthest;
    MapColours colours;
    colours.bar = ColourBar{.title = "margin, mm\u00b2",
                            .scale = {.least = -end, .most = end},
                            .colour = [end](double mm2) { return diverging(mm2 / end); },
                            .threshold = 0,
                            .open_below = *least<-end, .open_above = *most> end};
    colours.threshold_label = "margin 0";
    // Results count the margin of a share from nothing hidden: another figure than the map's.
    if (s->of_area())
        colours.worst_label = typeset_area(s->worst_margin);
    colours.painter = [s, colour = colours.bar->colour](const Bearing& b) {
        const auto mm2 = s->figures.grid.value_at(b, s->figures.margins);
        return mm2 ? std::optional(colour(*mm2)) : std::nullopt;
    };
    return colours;
}

std::string quantity(const ChartSubject& s) { return std::string(s.words().title); }

/// What every map of areas says at its end.
std::string findings_words(const ChartSubject& s)
{
    return s.worst_words + "; met in " + s.coverage_words + ".";
}

/// Where no direction is on the other side of it there is no line.
std::string threshold_words(const ChartSubject& s)
{
    return s.threshold.empty() ? "" : " Thick line: " + s.threshold_words + ".";
}

std::string hatching_words(const ChartSubject& s)
{
    return s.regions.empty() ? "" : " Hatched where it is not met.";
}

/// Of light that is partly in the shade: what the figures stand on.
std::string basis_words(const ChartSubject& s)
{
    return s.charted == Charted::light_left
               ? " The file's intensity times the share in view, an estimate where a part is "
                 "hidden; colours in decades."
               : "";
}

} // namespace

Figure value_map(const Subject& s)
{
    const AxisEnds h = ends_of_h(s->speech);
    Figure f;
    f.title = quantity(*s) + " by direction";
    f.caption = quantity(*s) + " of " + s->lamp + ", from every direction asked; " + h.positive +
                " to the right, for lamps of either side." + threshold_words(*s) +
                hatching_words(*s) + basis_words(*s) + " " + capitalised(findings_words(*s));
    f.alt = "Map of " + std::string(s->words().in_alt) +
            " by longitude and latitude: " + findings_words(*s);
    f.drawing = map_chart(s, plane_frame(s->field, s->speech, map_room), value_colours(s));
    return f;
}

Figure polar_value_map(const Subject& s)
{
    Figure f;
    f.title = quantity(*s) + " about the axis";
    f.caption = "The same about the axis of reference, which lies where the thin lines cross: "
                "directions stand as far from it as they are in degrees, a ring every 30 deg, so "
                "that none looks larger than it is along them. " +
                capitalised(findings_words(*s));
    f.alt = "Polar map of " + std::string(s->words().in_alt) + ": " + findings_words(*s);
    f.drawing = map_chart(s, polar_frame(s->field, s->speech, map_room), value_colours(s));
    return f;
}

Figure margin_map(const Subject& s)
{
    Figure f;
    f.title = "Margin by direction";
    f.caption = "How much more area is in view than asked (blue), or how much less "
                "(orange)." +
                threshold_words(*s) + hatching_words(*s);
    if (!s->of_area())
        f.caption = "How much less is hidden than is allowed (blue), or how much more (orange)." +
                    threshold_words(*s) + hatching_words(*s);
    f.alt = "Map of the margin by longitude and latitude: " + findings_words(*s);
    f.drawing = map_chart(s, plane_frame(s->field, s->speech, map_room), margin_colours(s));
    return f;
}

} // namespace glim
