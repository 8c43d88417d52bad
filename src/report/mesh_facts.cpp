#include "report/mesh_facts.h"

#include "geometry/chord_error.h"
#include "geometry/likely_unit.h"
#include "report/health_json.h"
#include "words/health_words.h"
#include "words/numbers.h"

namespace glim {

namespace {

/// Coordinates for people; a metre file in metres still shows millimetres.
constexpr int shown_decimals = 3;
/// A chord error is some hundredths of a millimetre, and the file may be in metres.
constexpr int chord_decimals = 6;

std::vector<PartFacts> parts_of(const MeshFile& mesh)
{
    std::vector<PartFacts> parts;
    for (const MeshPart& part : mesh.parts)
        parts.push_back({.part = part, .facets = 0, .box = {}});
    for (std::size_t f = 0; f < mesh.mesh.facets.size(); ++f) {
        PartFacts& part = parts[mesh.part_of_facet[f]];
        ++part.facets;
        for (int corner = 0; corner < 3; ++corner)
            part.box.add(mesh.mesh.corner(f, corner));
    }
    return parts;
}

std::string coordinates(const Point& p)
{
    return rounded(p.x(), shown_decimals) + ", " + rounded(p.y(), shown_decimals) + ", " +
           rounded(p.z(), shown_decimals);
}

std::string box_words(const Box& box)
{
    return "[" + coordinates(box.least) + "] to [" + coordinates(box.most) + "]";
}

std::string or_dash(const std::string& name) { return name.empty() ? "-" : name; }

std::vector<std::string> part_table(const std::vector<PartFacts>& parts)
{
    std::vector<std::vector<std::string>> rows{{"object", "group", "material", "facets", "box"}};
    for (const PartFacts& p : parts)
        rows.push_back({or_dash(p.part.object), or_dash(p.part.group), or_dash(p.part.material),
                        std::to_string(p.facets), box_words(p.box)});
    return aligned_rows(rows, {3});
}

std::string decimals_words(int decimals)
{
    return "up to " + std::to_string(decimals) + " significant digits";
}

/// What of the file does not come through as it was drawn.
std::vector<Labelled> reservations(const MeshFacts& facts)
{
    std::vector<Labelled> entries;
    if (facts.crossed_polygons > 0)
        entries.push_back({"crossed", "polygons that cross themselves: " +
                                          std::to_string(facts.crossed_polygons) +
                                          "; each became a fan of triangles, which may overlap"});
    if (facts.curved_surfaces > 0)
        entries.push_back({"not read", counted(facts.curved_surfaces, "free-form surface") +
                                           ": what they would hide is missing; "
                                           "export them as triangles"});
    return entries;
}

Json point_json(const Point& p) { return Json::Array{p.x(), p.y(), p.z()}; }

Json box_json(const Box& box)
{
    if (box.empty())
        return {};
    return Json::Object{{"least", point_json(box.least)}, {"most", point_json(box.most)}};
}

Json part_json(const PartFacts& p)
{
    return Json::Object{{"object", p.part.object},
                        {"group", p.part.group},
                        {"material", p.part.material},
                        {"facets", p.facets},
                        {"box", box_json(p.box)}};
}

Json units_json(const Box& box)
{
    Json::Array units;
    for (const MeshUnit& unit : likely_units(box))
        units.push_back(unit.word);
    return units;
}

} // namespace

MeshFacts mesh_facts(const MeshFile& mesh, std::string file)
{
    return {.file = std::move(file),
            .format = mesh.format,
            .points_in_file = mesh.points_in_file,
            .polygons_in_file = mesh.polygons_in_file,
            .crossed_polygons = mesh.crossed_polygons,
            .curved_surfaces = mesh.curved_surfaces,
            .decimals = mesh.decimals,
            .box = box_of(mesh.mesh),
            .health = health_of(mesh.mesh),
            .chord_error =
                in_mm(chord_error(mesh.mesh)), // a length in the file's unit, as any here
            .parts = parts_of(mesh)};
}

std::string mesh_words(const MeshFacts& facts, const TextStyle& style)
{
    std::vector<Labelled> entries{
        {"format", facts.format},
        {"in the file", counted(facts.points_in_file, "point") + ", " +
                            counted(facts.polygons_in_file, "polygon") + "; coordinates of " +
                            decimals_words(facts.decimals)},
        {"box", box_words(facts.box) + " in the file's own unit"},
        {"unit", likely_unit_words(facts.box) + "; a study has to say it"}};
    entries.push_back({"chord error", "about " + rounded(facts.chord_error, chord_decimals) +
                                          ", estimated from how facets bend"});
    for (const std::vector<Labelled>& more : {reservations(facts), health_entries(facts.health)})
        entries.insert(entries.end(), more.begin(), more.end());
    std::string text = wrapped(facts.file, style.columns) + "\n";
    text += labelled_block(entries, 2, style) + "\nParts, in the order of the file\n";
    for (const std::string& line : part_table(facts.parts))
        text += "  " + line + "\n";
    return text;
}

Json mesh_json(const MeshFacts& facts)
{
    Json::Array parts;
    for (const PartFacts& part : facts.parts)
        parts.push_back(part_json(part));
    return Json::Object{{"file", facts.file},
                        {"format", facts.format},
                        {"points_in_file", facts.points_in_file},
                        {"polygons_in_file", facts.polygons_in_file},
                        {"crossed_polygons", facts.crossed_polygons},
                        {"curved_surfaces", facts.curved_surfaces},
                        {"significant_digits", facts.decimals},
                        {"box", box_json(facts.box)},
                        {"likely_units", units_json(facts.box)},
                        {"chord_error", facts.chord_error},
                        {"health", health_json(facts.health)},
                        {"parts", std::move(parts)}};
}

} // namespace glim
