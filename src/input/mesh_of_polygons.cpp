#include "input/mesh_of_polygons.h"

#include "geometry/triangulate.h"
#include "geometry/weld.h"
#include "input/read_mesh_openmesh.h"
#include "model/complaint.h"

#include <algorithm>

namespace glim {

namespace {

/// Of the mesh's longest side: 0.04 mm for 4 m, less than anything that is looked for.
constexpr double coarsest_rounding = 1e-5;

void check_rounding(const PlainPly& plain, const std::string& name)
{
    if (plain.most_rounding() > coarsest_rounding * plain.longest_side())
        refuse(Place{name, 0, 0, {}},
               "the mesh lies so far from its origin that the 7 digits which are read here would "
               "deform it",
               "move it nearer to its origin, or export it as OBJ, which is read in full");
}

void check_counts(const PlainPly& plain, const PolygonSoup& soup, const std::string& name)
{
    const bool indices_hold =
        std::all_of(soup.corners.begin(), soup.corners.end(),
                    [&](std::uint32_t corner) { return corner < soup.points.size(); });
    if (soup.points.size() == plain.points() && soup.sizes.size() == plain.faces() &&
        soup.corners.size() == plain.corners() && indices_hold)
        return;
    refuse(Place{name, 0, 0, {}},
           "OpenMesh read " + std::to_string(soup.points.size()) + " points and " +
               std::to_string(soup.sizes.size()) + " faces, but the file holds " +
               std::to_string(plain.points()) + " and " + std::to_string(plain.faces()),
           "export the mesh as OBJ or STL, which are read without it");
}

void add_polygon(MeshFile& file, std::span<const std::uint32_t> corners, std::uint32_t part)
{
    std::vector<Point> outline;
    outline.reserve(corners.size());
    for (const std::uint32_t corner : corners)
        outline.push_back(file.mesh.points[corner]);
    std::optional<std::vector<Facet>> triangles = triangulated(outline);
    if (!triangles) {
        ++file.crossed_polygons;
        triangles = fan_of(corners.size());
    }
    for (const Facet& t : *triangles) {
        file.mesh.facets.push_back({corners[t[0]], corners[t[1]], corners[t[2]]});
        file.part_of_facet.push_back(part);
    }
}

} // namespace

MeshFile mesh_of_polygons(const PlainPly& plain, std::vector<MeshPart> parts,
                          const std::vector<std::uint32_t>& part_of_polygon,
                          const std::string& name)
{
    check_rounding(plain, name);
    PolygonSoup soup = read_with_openmesh(plain.bytes());
    check_counts(plain, soup, name);

    MeshFile file;
    file.points_in_file = soup.points.size();
    file.polygons_in_file = soup.sizes.size();
    file.parts = std::move(parts);
    file.mesh.points = std::move(soup.points);
    std::size_t first = 0;
    for (std::size_t i = 0; i < soup.sizes.size(); ++i) {
        add_polygon(file, std::span(soup.corners).subspan(first, soup.sizes[i]),
                    part_of_polygon[i]);
        first += soup.sizes[i];
    }
    file.mesh = welded(file.mesh);
    return file;
}

} // namespace glim
