#include "drawing/charts.h"

#include "drawing/area_maps.h"
#include "drawing/blocking_chart.h"
#include "drawing/map_frame.h"
#include "drawing/profile_chart.h"
#include "words/look_words.h"

namespace glim {

namespace {

std::vector<std::string> names_of(const BlockingMap& blocking, const LampLook& look)
{
    std::vector<std::string> names;
    for (const BlockingMap::Surface& s : blocking.surfaces)
        names.push_back(surface_label(s.name, s.twin, look));
    return names;
}

} // namespace

std::vector<Figure> charts_of(const Findings& findings, const CheckFindings& check,
                              const RowFindings& row, const LampVerdict& verdict,
                              const BlockingMap& blocking)
{
    std::vector<Figure> charts;
    if (!has_areas(verdict) || verdict.light) // charts are of areas
        return charts;
    const LampLook& look = findings.looks[verdict.look];
    const auto subject = chart_subject(check, row, verdict, look, findings.sampling.hairline);
    if (subject->figures.grid.has_cells()) {
        charts.push_back(area_map(subject));
        // Where nothing may be hidden at all, the margin is what is hidden with its sign turned.
        if (!std::holds_alternative<NoObstacle>(row.row.criterion))
            charts.push_back(margin_map(subject));
        charts.push_back(blocking_chart(subject, verdict, blocking, names_of(blocking, look)));
        if (is_wide(verdict.field))
            charts.push_back(polar_area_map(subject));
    }
    for (Figure& profile : profile_charts(subject, look))
        charts.push_back(std::move(profile));
    return charts;
}

} // namespace glim
