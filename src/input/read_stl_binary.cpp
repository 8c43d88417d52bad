#include "input/read_stl_binary.h"

#include "geometry/weld.h"
#include "input/capped_complaints.h"
#include "input/number_word.h"

#include <bit>
#include <charconv>
#include <cmath>

namespace glim {

namespace {

constexpr std::size_t title_size = 80;
constexpr std::size_t header_size = title_size + 4;
constexpr std::size_t facet_size = 50;
constexpr std::size_t normal_size = 12; ///< before the first corner; not looked at
constexpr std::size_t float_size = 4;
constexpr int digits_of_float = 7;

std::uint32_t whole_number_at(std::string_view bytes, std::size_t at)
{
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i)
        value |= std::uint32_t{static_cast<unsigned char>(bytes[at + i])} << (8 * i);
    return value;
}

double float_at(std::string_view bytes, std::size_t at)
{
    return std::bit_cast<float>(whole_number_at(bytes, at));
}

std::uint64_t size_for(std::uint64_t facets) { return header_size + facet_size * facets; }

Place place_at(const std::string& name, std::size_t byte)
{
    return {.file = name, .line = 0, .column = 0, .byte = byte};
}

void refuse_wrong_size(std::string_view bytes, const std::string& name)
{
    if (bytes.size() < header_size)
        throw InputError({{place_at(name, bytes.size()),
                           "the file ends within the first 84 bytes that every binary STL has",
                           "copy or export it again"}});
    const std::uint32_t count = whole_number_at(bytes, title_size);
    if (bytes.size() == size_for(count))
        return;
    const bool is_short = bytes.size() < size_for(count);
    throw InputError({{place_at(name, title_size),
                       "the header counts " + std::to_string(count) + " facets, which take " +
                           std::to_string(size_for(count)) + " bytes, but the file has " +
                           std::to_string(bytes.size()),
                       is_short ? "the file was cut short, or is no STL: copy or export it again"
                                : "there is more in it than it says: export it again"}});
}

std::string written(double value)
{
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value);
    return {text.data(), end.ptr};
}

void complain_of_coordinate(CappedComplaints& complaints, const Place& place, double value)
{
    complaints.add("coordinates that cannot be used", [&] {
        const std::string what = "the coordinate " + written(value);
        if (!std::isfinite(value))
            return Complaint{place, what + " is not a finite number",
                             "repair the mesh where it comes from"};
        return Complaint{place, what + " is too large", "bring the mesh within 1e9 of its origin"};
    });
}

/// The point whose first coordinate is at `at`; complains of what is no coordinate.
Point point_at(std::string_view bytes, std::size_t at, const std::string& name,
               CappedComplaints& complaints)
{
    Point point;
    for (double& value : point) {
        value = float_at(bytes, at);
        if (!(std::abs(value) <= largest_coordinate)) // "not a number" compares with nothing
            complain_of_coordinate(complaints, place_at(name, at), value);
        at += float_size;
    }
    return point;
}

TriangleMesh mesh_in(std::string_view bytes, const std::string& name, CappedComplaints& complaints)
{
    const std::size_t count = whole_number_at(bytes, title_size);
    TriangleMesh mesh;
    mesh.facets.reserve(count);
    PointTable points(count / 2); // a closed surface has about half as many as facets
    for (std::size_t f = 0; f < count; ++f) {
        Facet facet{};
        for (std::size_t c = 0; c < 3; ++c) {
            const std::size_t at = size_for(f) + normal_size + 3 * float_size * c;
            const Point corner = point_at(bytes, at, name, complaints);
            facet[c] = complaints.empty() ? points.add(corner) : 0;
        }
        mesh.facets.push_back(facet);
    }
    mesh.points = points.take_points();
    return mesh;
}

} // namespace

bool has_exact_size_of_binary_stl(std::string_view bytes)
{
    return bytes.size() >= header_size &&
           bytes.size() == size_for(whole_number_at(bytes, title_size));
}

MeshFile read_stl_binary(std::string_view bytes, const std::string& name)
{
    refuse_wrong_size(bytes, name);
    CappedComplaints complaints(name);
    MeshFile file;
    file.mesh = mesh_in(bytes, name, complaints);
    const std::size_t count = file.mesh.facets.size();
    if (count == 0)
        complaints.add("", [&] {
            return Complaint{place_at(name, title_size), "there is no facet in this file",
                             "export the surfaces as a mesh"};
        });
    complaints.throw_if_any();

    file.format = "STL (binary)";
    file.parts = {MeshPart{}};
    file.part_of_facet.assign(count, 0);
    file.points_in_file = 3 * count;
    file.polygons_in_file = count;
    file.decimals = digits_of_float;
    return file;
}

} // namespace glim
