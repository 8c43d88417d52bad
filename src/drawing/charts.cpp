#include "drawing/charts.h"

#include "drawing/blocking_chart.h"
#include "drawing/map_frame.h"
#include "drawing/profile_chart.h"
#include "drawing/value_maps.h"
#include "words/look_words.h"

#include <algorithm>

namespace glim {

namespace {

std::vector<std::string> names_of(const BlockingMap& blocking, const LampLook& look)
{
    std::vector<std::string> names;
    for (const BlockingMap::Surface& s : blocking.surfaces)
        names.push_back(surface_label(s.name, s.twin, look));
    return names;
}

void add(std::vector<Figure>& charts, std::vector<Figure> more)
{
    for (Figure& figure : more)
        charts.push_back(std::move(figure));
}

/// The light of the lamp under a row of the proof.
std::vector<Figure> light_charts(const Findings& findings, const CheckFindings& check,
                                 const RowFindings& proof, const LampVerdict& verdict)
{
    const LampLook& look = findings.looks[verdict.look];
    const auto subject = chart_subject(check, proof, verdict, look, findings.sampling.hairline);
    std::vector<Figure> charts;
    if (subject->figures.grid.has_cells())
        charts.push_back(value_map(subject));
    add(charts, profile_charts(subject, look));
    return charts;
}

/// Where the proof is due: what its estimate stands on, of rows that ask the whole field.
std::vector<Figure> proof_charts(const Findings& findings, const CheckFindings& check,
                                 const RowFindings& row, const LampVerdict& verdict)
{
    std::vector<Figure> charts;
    const auto lamp = std::find_if(row.lamps.begin(), row.lamps.end(),
                                   [&](const LampVerdict& v) { return &v == &verdict; });
    if (!verdict.estimate || !row.row.proof || lamp == row.lamps.end())
        return charts;
    const auto place = static_cast<std::size_t>(lamp - row.lamps.begin());
    for (const RowFindings& proof : check.rows)
        if (proof.proof_from == row.row.proof->table && proof.lamps[place].light &&
            std::holds_alternative<LeastIntensity>(proof.row.criterion))
            add(charts, light_charts(findings, check, proof, proof.lamps[place]));
    return charts;
}

} // namespace

std::vector<Figure> charts_of(const Findings& findings, const CheckFindings& check,
                              const RowFindings& row, const LampVerdict& verdict,
                              const BlockingMap& blocking)
{
    std::vector<Figure> charts;
    if (!has_areas(verdict))
        return charts;
    const LampLook& look = findings.looks[verdict.look];
    const auto subject = chart_subject(check, row, verdict, look, findings.sampling.hairline);
    if (subject->figures.grid.has_cells()) {
        charts.push_back(value_map(subject));
        // Where nothing may be hidden at all, the margin is what is hidden with its sign turned.
        // That of light, which spans decades, is told by its line on the map.
        if (!std::holds_alternative<NoObstacle>(row.row.criterion) && !verdict.light)
            charts.push_back(margin_map(subject));
        charts.push_back(blocking_chart(subject, verdict, blocking, names_of(blocking, look)));
        if (is_wide(verdict.field))
            charts.push_back(polar_value_map(subject));
    }
    add(charts, profile_charts(subject, look));
    add(charts, proof_charts(findings, check, row, verdict));
    return charts;
}

} // namespace glim
