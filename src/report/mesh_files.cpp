#include "report/mesh_files.h"

#include "report/little_endian.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

constexpr std::size_t stl_comment_bytes = 80;

std::string without_blanks(std::string name)
{
    std::ranges::replace(name, ' ', '_');
    return name;
}

std::string coordinates(const Point& p)
{
    return shortest(p.x()) + " " + shortest(p.y()) + " " + shortest(p.z());
}

void append_floats(std::string& bytes, const Vector& v)
{
    for (int i = 0; i < 3; ++i)
        append_float(bytes, v[i]);
}

std::string ply_header(const TriangleMesh& mesh, const std::string& property,
                       const std::string& comment)
{
    return "ply\nformat binary_little_endian 1.0\ncomment " + comment + "\nelement vertex " +
           std::to_string(mesh.points.size()) +
           "\nproperty float x\nproperty float y\nproperty float z\nproperty uchar red\n"
           "property uchar green\nproperty uchar blue\nproperty float " +
           property + "\nelement face " + std::to_string(mesh.facets.size()) +
           "\nproperty list uchar int vertex_indices\nend_header\n";
}

} // namespace

std::string obj_of(std::span<const NamedPart> parts)
{
    std::string text;
    std::size_t first = 1;
    for (const NamedPart& part : parts) {
        text += "o " + without_blanks(part.name) + "\n";
        for (const Point& p : part.mesh->points)
            text += "v " + coordinates(p) + "\n";
        for (const Facet& facet : part.mesh->facets)
            text += "f " + std::to_string(first + facet[0]) + " " +
                    std::to_string(first + facet[1]) + " " + std::to_string(first + facet[2]) +
                    "\n";
        first += part.mesh->points.size();
    }
    return text;
}

std::string ply_of(const TriangleMesh& mesh, const PointFigures& painted,
                   const std::string& comment)
{
    std::string bytes = ply_header(mesh, painted.property, comment);
    for (std::size_t i = 0; i < mesh.points.size(); ++i) {
        append_floats(bytes, mesh.points[i]);
        const Colour& colour = painted.colours[i];
        for (const std::uint8_t channel : {colour.red, colour.green, colour.blue})
            bytes += static_cast<char>(channel);
        append_float(bytes, painted.figures[i]);
    }
    for (const Facet& facet : mesh.facets) {
        bytes += '\3';
        for (const std::uint32_t corner : facet)
            append_little_endian(bytes, corner);
    }
    return bytes;
}

std::string stl_of(const TriangleMesh& mesh, const std::string& comment)
{
    std::string bytes = comment.substr(0, stl_comment_bytes);
    bytes.resize(stl_comment_bytes, ' ');
    append_little_endian(bytes, static_cast<std::uint32_t>(mesh.facets.size()));
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        append_floats(bytes, area_vector(mesh, f).stableNormalized());
        for (int i = 0; i < 3; ++i)
            append_floats(bytes, mesh.corner(f, i));
        bytes += std::string(2, '\0');
    }
    return bytes;
}

} // namespace glim
