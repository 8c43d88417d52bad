#include "report/photometry_facts.h"

namespace glim {

namespace {

Json notes_json(const std::vector<PhotometryNote>& notes)
{
    Json::Array all;
    for (const PhotometryNote& note : notes)
        all.push_back(Json::Object{{"label", note.label}, {"text", note.text}});
    return all;
}

Json lamp_sets_json(const std::vector<LampSet>& sets)
{
    Json::Array all;
    for (const LampSet& set : sets)
        all.push_back(Json::Object{{"count", set.count},
                                   {"kind", set.kind},
                                   {"total_flux_lm", in_lumens(set.total_flux)},
                                   {"watts", set.watts}});
    return all;
}

Json angles_json(const std::vector<Angle>& angles)
{
    Json::Array all;
    for (const Angle a : angles)
        all.push_back(in_degrees(a));
    return all;
}

/// Row by row: all verticals of the first horizontal first.
Json candela_json(const IntensityGrid& grid)
{
    Json::Array rows;
    for (std::size_t h = 0; h < grid.horizontal.size(); ++h) {
        Json::Array row;
        for (std::size_t v = 0; v < grid.vertical.size(); ++v)
            row.push_back(in_candelas(grid.at(h, v)));
        rows.push_back(std::move(row));
    }
    return rows;
}

Json flux_json(const PhotometryFacts& facts)
{
    const Photometry& p = facts.photometry;
    if (!p.stated_flux)
        return Json::Object{{"integrated_lm", in_lumens(facts.flux)},
                            {"stated_lm", nullptr},
                            {"stated_of", nullptr},
                            {"difference", nullptr}};
    return Json::Object{
        {"integrated_lm", in_lumens(facts.flux)},
        {"stated_lm", in_lumens(*p.stated_flux)},
        {"stated_of", p.stated_flux_is_of == StatedFlux::bare_lamps ? "bare_lamps" : "luminaire"},
        {"difference", *facts.flux_difference}};
}

} // namespace

Json photometry_json(const PhotometryFacts& facts)
{
    const Photometry& p = facts.photometry;
    return Json::Object{{"file", facts.file},
                        {"format", p.format},
                        {"type", goniometer_words[std::size_t(p.grid.goniometer)].word},
                        {"absolute", p.absolute},
                        {"symmetry", filed_symmetry_words[std::size_t(p.symmetry)].key},
                        {"filed_horizontals", p.filed_horizontals},
                        {"candela_factor", p.candela_factor},
                        {"peak", Json::Object{{"candela", in_candelas(facts.peak.intensity)},
                                              {"horizontal_deg", in_degrees(facts.peak.at.h)},
                                              {"vertical_deg", in_degrees(facts.peak.at.v)}}},
                        {"flux", flux_json(facts)},
                        {"lamp_sets", lamp_sets_json(p.lamp_sets)},
                        {"opening_mm", Json::Object{{"width", in_mm(p.opening.width)},
                                                    {"length", in_mm(p.opening.length)},
                                                    {"height", in_mm(p.opening.height)}}},
                        {"tilt_when_measured_deg", in_degrees(p.tilt_when_measured)},
                        {"notes", notes_json(p.notes)},
                        {"horizontal_deg", angles_json(p.grid.horizontal)},
                        {"vertical_deg", angles_json(p.grid.vertical)},
                        {"candela", candela_json(p.grid)}};
}

} // namespace glim
