#include "report/coloured_mesh.h"

#include "drawing/colour_ramp.h"
#include "report/file_names.h"
#include "report/little_endian.h"
#include "words/numbers.h"

#include <cmath>

namespace glim {

namespace {

constexpr int obj_decimals = 4; // of a mm

std::string name_of(const BlockingSurface& surface)
{
    return plain_name(surface.name) + (surface.twin ? "-mirrored" : "");
}

std::string ply_header(std::span<const BlockingSurface> surfaces)
{
    std::size_t points = 0, facets = 0;
    std::string comments = "comment cornerglim: surfaces in the way; mm, vehicle frame\n";
    for (std::size_t i = 0; i < surfaces.size(); ++i) {
        points += surfaces[i].mesh.points.size();
        facets += surfaces[i].mesh.facets.size();
        comments += "comment surface " + std::to_string(i) + " is " + name_of(surfaces[i]) + "\n";
    }
    return "ply\nformat binary_little_endian 1.0\n" + comments + "element vertex " +
           std::to_string(points) + "\nproperty float x\nproperty float y\nproperty float z\n" +
           "element face " + std::to_string(facets) +
           "\nproperty list uchar int vertex_indices\nproperty uchar red\nproperty uchar green\n"
           "property uchar blue\nproperty int surface\nproperty int facet\nproperty float "
           "taken_mm2\nend_header\n";
}

void append_faces(std::string& bytes, const BlockingSurface& surface, std::uint32_t place,
                  std::uint32_t first_point)
{
    for (std::size_t f = 0; f < surface.mesh.facets.size(); ++f) {
        bytes += '\3';
        for (const std::uint32_t corner : surface.mesh.facets[f])
            append_little_endian(bytes, first_point + corner);
        const Colour colour = ramp_colour(surface.strength[f]);
        for (const std::uint8_t channel : {colour.red, colour.green, colour.blue})
            bytes += static_cast<char>(channel);
        append_little_endian(bytes, place);
        append_little_endian(bytes, surface.facets[f]);
        append_float(bytes, in_mm2(surface.taken[f]));
    }
}

/// What takes anything is at least of class 1.
int class_of(double strength)
{
    return strength <= 0 ? 0 : std::max(1, int(std::lround(strength * (colour_classes - 1))));
}

std::string material_of(int colour_class)
{
    return colour_class == 0 ? "takes_nothing" : "takes_" + std::to_string(colour_class);
}

void append_obj_surface(std::string& text, const BlockingSurface& surface, std::size_t first_point)
{
    text += "o " + name_of(surface) + "\n";
    for (const Point& p : surface.mesh.points)
        text += "v " + rounded(p.x(), obj_decimals) + " " + rounded(p.y(), obj_decimals) + " " +
                rounded(p.z(), obj_decimals) + "\n";
    int known_class = -1;
    for (std::size_t f = 0; f < surface.mesh.facets.size(); ++f) {
        if (const int here = class_of(surface.strength[f]); here != known_class) {
            text += "usemtl " + material_of(here) + "\n";
            known_class = here;
        }
        text += "f";
        for (const std::uint32_t corner : surface.mesh.facets[f])
            text += " " + std::to_string(first_point + corner + 1);
        text += "\n";
    }
}

} // namespace

std::string coloured_ply(std::span<const BlockingSurface> surfaces)
{
    std::string bytes = ply_header(surfaces);
    for (const BlockingSurface& surface : surfaces)
        for (const Point& p : surface.mesh.points)
            for (const double coordinate : p)
                append_float(bytes, coordinate);
    std::uint32_t first_point = 0;
    for (std::uint32_t place = 0; place < surfaces.size(); ++place) {
        append_faces(bytes, surfaces[place], place, first_point);
        first_point += static_cast<std::uint32_t>(surfaces[place].mesh.points.size());
    }
    return bytes;
}

std::string coloured_obj(std::span<const BlockingSurface> surfaces,
                         const std::string& material_file)
{
    std::string text =
        "# cornerglim: surfaces in the way; mm, vehicle frame\nmtllib " + material_file + "\n";
    std::size_t first_point = 0;
    for (const BlockingSurface& surface : surfaces) {
        append_obj_surface(text, surface, first_point);
        first_point += surface.mesh.points.size();
    }
    return text;
}

std::string colour_materials()
{
    std::string text = "# cornerglim: from what takes nothing to what takes most for its size\n";
    for (int c = 0; c < colour_classes; ++c) {
        const Colour colour = ramp_colour(double(c) / (colour_classes - 1));
        text += "newmtl " + material_of(c) + "\nKd";
        for (const std::uint8_t channel : {colour.red, colour.green, colour.blue})
            text += " " + rounded(channel / 255.0, 4);
        text += "\n";
    }
    return text;
}

} // namespace glim
