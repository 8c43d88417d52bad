#include "report/put_relief.h"

#include "drawing/colour_ramp.h"
#include "drawing/depth_map.h"
#include "drawing/relief_section.h"
#include "remedy/cutter_body.h"
#include "report/csv.h"
#include "report/file_names.h"
#include "report/mesh_files.h"
#include "report/study_overlay.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

std::string overlay_of(const Relief& relief, const std::vector<std::string>& files,
                       const Study& study, const std::filesystem::path& target)
{
    StudyOverlay overlay{.base = study.file,
                         .title = (study.title.empty() ? "" : study.title + ", ") +
                                  (relief.found() ? "relieved" : "relieved, but not enough"),
                         .about = {"A relief, laid over the study that it was found for:",
                                   "`cornerglim check` reads it like any other."}};
    for (std::size_t i = 0; i < files.size(); ++i)
        overlay.tables.push_back(
            reshaped_surface(study.surfaces[relief.shape.surfaces[i].surface], files[i] + ".obj"));
    return overlay_text(overlay, target);
}

std::string depths_ply(const ReshapedSurface& surface)
{
    PointFigures painted{"depth_mm", {}, {}};
    for (const Length depth : surface.depths)
        painted.figures.push_back(in_mm(depth));
    const double deepest = *std::max_element(painted.figures.begin(), painted.figures.end());
    for (const double depth : painted.figures)
        painted.colours.push_back(ramp_colour(deepest > 0 ? depth / deepest : 0));
    return ply_of(surface.mesh, painted, "cornerglim: depth of a relief; mm, vehicle frame");
}

void append_curve(const std::string& section, const std::string& curve,
                  const std::vector<SectionLine>& lines, std::string& text)
{
    for (std::size_t i = 0; i < lines.size(); ++i) {
        std::vector<SectionPoint> points = lines[i].points;
        if (lines[i].closed)
            points.push_back(points.front());
        for (const SectionPoint& p : points)
            text += csv_row({section, curve, std::to_string(i + 1), rounded(p.at.x(), 4),
                             rounded(p.at.y(), 4), rounded(p.at.z(), 4), rounded(p.figure, 4)});
    }
}

std::string sections_csv(const std::vector<ReliefSection>& sections)
{
    std::string text = csv_row({"section", "curve", "line", "x_mm", "y_mm", "z_mm", "depth_mm"});
    for (const ReliefSection& section : sections) {
        const std::string name = std::string(axis_names[section.view.along]) + " = " +
                                 rounded(section.through[section.view.along], 4);
        append_curve(name, "before", section.before, text);
        append_curve(name, "after", section.after, text);
    }
    return text;
}

void put_surface(const ReshapedSurface& surface, const Study& study, const std::string& file,
                 NewFolder& folder)
{
    const Surface& drawn = study.surfaces[surface.surface];
    const std::vector<NamedPart> parts{{drawn.name, &surface.mesh}};
    folder.put(file + ".obj", obj_of(parts));
    folder.put(file + "-depth.ply", depths_ply(surface));
    folder.put(file + "-cutter.stl",
               stl_of(cutter_body(surface), "cornerglim: the body to be cut away; mm"));
    const Figure map = depth_map(surface, drawn.name, study.vehicle);
    folder.put(file + "-depth.svg", svg_of(map.drawing));
    folder.put(file + "-depth.png", png_of(map.drawing));
    const std::vector<ReliefSection> sections = relief_sections(surface, drawn.mesh, study.vehicle);
    for (const ReliefSection& section : sections)
        folder.put(file + "-section-" + std::string(axis_names[section.view.along]) + ".svg",
                   svg_of(section_figure(section, drawn.name).drawing));
    folder.put(file + "-sections.csv", sections_csv(sections));
}

} // namespace

void put_relief(const Relief& relief, const Study& study, const std::filesystem::path& target,
                NewFolder& folder)
{
    if (relief.shape.surfaces.empty())
        return;
    std::vector<std::string> names;
    for (const ReshapedSurface& surface : relief.shape.surfaces)
        names.push_back(study.surfaces[surface.surface].name);
    const std::vector<std::string> files = plain_names(names);
    folder.put("study.toml", overlay_of(relief, files, study, target));
    for (std::size_t i = 0; i < files.size(); ++i)
        put_surface(relief.shape.surfaces[i], study, files[i], folder);
}

} // namespace glim
