#include "input/sketched_lens.h"

#include "geometry/likely_unit.h"
#include "geometry/placement.h"
#include "input/axis_words.h"
#include "input/read_mesh.h"
#include "input/read_selection.h"
#include "model/source_file.h"
#include "model/study.h"
#include "units/trig.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// The arc between two strips of a wrapped lens lies nowhere farther from its chord than this.
constexpr double arc_error_mm = 0.1;
constexpr Angle most_turn = degrees(80);

const std::vector<std::string> outlines = {"flat", "wrap", "mesh"};

/// A length of the lens, above 0.
std::optional<double> read_size(TableReader& lens, const char* key, const char* remedy)
{
    lens.demand(key, remedy);
    const std::optional<Length> size = lens.length(key);
    if (size && *size <= Length()) {
        lens.complain(key, "`" + std::string(key) + "` of [lens] is not above 0", remedy);
        return std::nullopt;
    }
    return size ? std::optional(in_mm(*size)) : std::nullopt;
}

/// Strips from one upright edge to the next, facing to the right of the way that the edges run.
TriangleMesh strips(const std::vector<Point2>& edges, double height)
{
    TriangleMesh mesh;
    for (const Point2& p : edges) {
        mesh.points.emplace_back(p.x(), p.y(), -height / 2);
        mesh.points.emplace_back(p.x(), p.y(), height / 2);
    }
    for (std::uint32_t i = 0; i + 3 < mesh.points.size(); i += 2) {
        mesh.facets.push_back({i, i + 2, i + 3});
        mesh.facets.push_back({i, i + 3, i + 1});
    }
    return mesh;
}

std::optional<Angle> read_tilt(TableReader& lens, const char* key)
{
    const Angle angle = lens.angle(key).value_or(Angle());
    if (angle >= -most_turn && angle <= most_turn)
        return angle;
    lens.complain(key, "`" + std::string(key) + "` of [lens] is not between -80 and 80 degrees",
                  "write how far the lens is turned, in degrees");
    return std::nullopt;
}

std::optional<TriangleMesh> flat_lens(TableReader& lens)
{
    const auto width = read_size(lens, "width", "write the width of the lens, mm");
    const auto height = read_size(lens, "height", "write the height of the lens, mm");
    const auto turned = read_tilt(lens, "turned");
    const auto leaned = read_tilt(lens, "leaned");
    if (!width || !height || !turned || !leaned)
        return std::nullopt;
    const TriangleMesh plate = strips({{0, -*width / 2}, {0, *width / 2}}, *height);
    const Placement lean = Placement::turn(Point::Zero(), Direction::y(), -*leaned);
    const Placement turn = Placement::turn(Point::Zero(), Direction::z(), *turned);
    return placed(plate, turn * lean);
}

std::optional<TriangleMesh> wrapped_lens(TableReader& lens)
{
    const auto radius = read_size(lens, "radius", "write the radius of the wrap in plan, mm");
    const auto height = read_size(lens, "height", "write the height of the lens, mm");
    lens.demand("from", "write which way the inner edge looks, degrees outboard of ahead");
    lens.demand("to", "write which way the outer edge looks, degrees outboard of ahead");
    const std::optional<Angle> from = lens.angle("from");
    const std::optional<Angle> to = lens.angle("to");
    if (!radius || !height || !from || !to)
        return std::nullopt;
    if (*from >= *to || *to - *from > degrees(180)) {
        lens.complain("to", "the wrap of [lens] does not go from `from` to `to`",
                      "write a greater angle, at most 180 degrees on");
        return std::nullopt;
    }
    const double most_step = 2 * std::acos(std::max(0.0, 1 - arc_error_mm / *radius));
    const int steps =
        std::clamp(static_cast<int>(std::ceil(in_radians(*to - *from) / most_step)), 2, 64);
    std::vector<Point2> edges;
    for (int i = 0; i <= steps; ++i) {
        const Angle at = *from + (*to - *from) * i / steps;
        edges.emplace_back(*radius * cos(at), *radius * sin(at));
    }
    return strips(edges, *height);
}

/// The axes of a lens: x ahead, z up.
Vehicle sketch_axes()
{
    Vehicle vehicle;
    vehicle.forward = Direction::x();
    vehicle.up = Direction::z();
    return vehicle;
}

/// What `select` leaves of the file; nothing after a complaint.
std::optional<SketchedLens> selected_lens(TableReader& lens, MeshFile file, const Selection& chosen)
{
    const NamedMesh named{std::move(file.mesh), std::move(file.parts),
                          std::move(file.part_of_facet)};
    if (complain_of_idle_patterns(named, chosen, lens.complaints()) > 0)
        return std::nullopt;
    const std::vector<std::uint32_t> facets = selected_facets(named, chosen, sketch_axes());
    if (facets.empty()) {
        lens.complain("select", "`select` of [lens] selects no facet",
                      "no facet fits all its keys at once; the box counts x ahead, y outboard and "
                      "z up in the file's own place");
        return std::nullopt;
    }
    return SketchedLens{part_of(named.mesh, facets), named.mesh.facets.size()};
}

std::optional<SketchedLens> mesh_lens(TableReader& lens)
{
    lens.demand("file", "name the mesh file");
    lens.demand("unit", "write \"mm\", \"cm\", \"m\", \"inch\" or \"foot\"");
    const std::optional<std::string> file = lens.text("file");
    const MeshUnit* unit = lens.row_of("unit", mesh_units, &MeshUnit::word);
    const std::optional<FrameAxes> axes = read_axes(lens);
    const std::size_t complaints_before = lens.complaints().size();
    const Selection chosen = read_selection(lens);
    if (lens.complaints().size() > complaints_before)
        return std::nullopt;
    if (!file || !unit || !axes)
        return std::nullopt;
    const std::filesystem::path path = lens.folder_of("file") / *file;
    try {
        MeshFile mesh = read_mesh(path, path.string());
        for (Point& p : mesh.mesh.points)
            p *= in_mm(unit->one);
        mesh.mesh = placed(mesh.mesh, Placement::axes(FrameAxes{}.columns(), axes->columns()));
        return selected_lens(lens, std::move(mesh), chosen);
    } catch (const InputError& error) {
        lens.complaints().add(error);
        return std::nullopt;
    }
}

/// Nothing where there is no lens.
std::optional<SketchedLens> drawn(std::optional<TriangleMesh> mesh)
{
    return mesh ? std::optional(SketchedLens{std::move(*mesh)}) : std::nullopt;
}

std::optional<SketchedLens> lens_of(TableReader& lens)
{
    lens.demand("outline", "write outline = \"flat\", \"wrap\" or \"mesh\"");
    const std::optional<std::size_t> outline = lens.choice("outline", outlines);
    if (!outline)
        return std::nullopt;
    return *outline == 0   ? drawn(flat_lens(lens))
           : *outline == 1 ? drawn(wrapped_lens(lens))
                           : mesh_lens(lens);
}

} // namespace

std::optional<SketchedLens> read_sketched_lens(TableReader& top)
{
    std::optional<TableReader> lens = top.table("lens", "[lens]");
    if (!lens) {
        top.demand("lens", "add [lens] with outline = \"flat\", \"wrap\" or \"mesh\"");
        return std::nullopt;
    }
    std::optional<SketchedLens> drawn = lens_of(*lens);
    lens->complain_of_unknown_keys();
    if (!drawn || drawn->mesh.points.empty())
        return std::nullopt;
    const Point middle = box_of(drawn->mesh).centre();
    for (Point& p : drawn->mesh.points)
        p -= middle;
    return drawn;
}

} // namespace glim
