#include "input/read_ply.h"

#include "input/mesh_of_polygons.h"
#include "input/mesh_parts.h"
#include "input/ply_body.h"
#include "input/polygon_limits.h"

#include <algorithm>
#include <array>

namespace glim {

namespace {

constexpr int digits_of_float = 7;
constexpr std::array<std::string_view, 4> colours = {"red", "green", "blue", "alpha"};

struct FormatWords {
    PlyEncoding encoding;
    std::string_view words;
};
constexpr std::array format_words = {
    FormatWords{PlyEncoding::text, "PLY (ASCII)"},
    FormatWords{PlyEncoding::little_endian, "PLY (binary, little-endian)"},
    FormatWords{PlyEncoding::big_endian, "PLY (binary, big-endian)"},
};

/// The first whole number of a face that is no colour: exporters keep groups there.
std::size_t place_of_part(const PlyElement& faces)
{
    const auto found =
        std::find_if(faces.properties.begin(), faces.properties.end(), [](const PlyProperty& p) {
            return !p.is_list() && p.type->is_whole &&
                   std::find(colours.begin(), colours.end(), p.name) == colours.end();
        });
    return static_cast<std::size_t>(found - faces.properties.begin());
}

class PlyReader {
public:
    PlyReader(std::string_view bytes, const std::string& name)
        : name_(name), header_(read_ply_header(bytes, name)), complaints_(name),
          body_(PlyBody::of(bytes, header_, name, complaints_))
    {
    }

    MeshFile read();

private:
    void read_points(const PlyElement& points);
    void read_faces(const PlyElement& faces);
    void read_face(const PlyElement& faces, std::size_t part_place);
    void read_corners(const PlyProperty& property);
    std::optional<std::uint32_t> corner(const PlyType& type);
    void pass_over(const PlyElement& element);
    void pass_over(const PlyProperty& property);
    std::int64_t length_of_list(const PlyProperty& property);
    void complain(const std::string& kind, std::string what, std::string remedy);

    const std::string& name_;
    PlyHeader header_;
    CappedComplaints complaints_;
    std::unique_ptr<PlyBody> body_;
    PlainPly plain_;
    MeshParts parts_;
    std::vector<std::uint32_t> part_of_polygon_;
    std::vector<std::uint32_t> corners_; ///< of the face at hand
};

MeshFile PlyReader::read()
{
    for (const PlyElement& element : header_.elements)
        if (element.name == "vertex")
            read_points(element);
        else if (element.name == "face")
            read_faces(element);
        else
            pass_over(element);
    body_->end();
    complaints_.throw_if_any();

    MeshFile file = mesh_of_polygons(plain_, parts_.take(), part_of_polygon_, name_);
    file.decimals = digits_of_float;
    for (const FormatWords& row : format_words)
        if (row.encoding == header_.encoding)
            file.format = row.words;
    return file;
}

void PlyReader::read_points(const PlyElement& points)
{
    const std::array<std::size_t, 3> axes = {points.place_of("x"), points.place_of("y"),
                                             points.place_of("z")};
    for (std::size_t i = 0; i < points.count; ++i) {
        body_->begin_item([i] { return "point " + std::to_string(i); });
        Point point = Point::Zero();
        for (std::size_t p = 0; p < points.properties.size(); ++p) {
            const auto axis = std::find(axes.begin(), axes.end(), p);
            if (axis == axes.end())
                pass_over(points.properties[p]);
            else
                point[axis - axes.begin()] =
                    body_->coordinate(*points.properties[p].type).value_or(0);
        }
        body_->end_item();
        plain_.add_point(point);
    }
}

void PlyReader::read_faces(const PlyElement& faces)
{
    const std::size_t part_place = place_of_part(faces);
    for (std::size_t i = 0; i < faces.count; ++i) {
        body_->begin_item([i] { return "face " + std::to_string(i); });
        read_face(faces, part_place);
        body_->end_item();
    }
}

void PlyReader::read_face(const PlyElement& faces, std::size_t part_place)
{
    for (std::size_t p = 0; p < faces.properties.size(); ++p) {
        const PlyProperty& property = faces.properties[p];
        if (is_corner_list(property))
            read_corners(property);
        else if (p != part_place)
            pass_over(property);
        else if (const auto part = body_->whole_number(*property.type))
            parts_.set(&MeshPart::group, property.name + " " + std::to_string(*part));
    }
    plain_.add_face(corners_);
    part_of_polygon_.push_back(parts_.current());
}

void PlyReader::read_corners(const PlyProperty& property)
{
    corners_.clear();
    const std::int64_t count = length_of_list(property);
    if (body_->gave_up())
        return;
    const bool is_too_long = count > static_cast<std::int64_t>(most_corners_of_a_face);
    if (is_too_long)
        complain("faces with too many corners",
                 "a face may have " + std::to_string(most_corners_of_a_face) +
                     " corners, and this has " + std::to_string(count),
                 "let the export cut it into triangles");
    else if (count < 3)
        complain("faces with too few corners",
                 "a face needs 3 corners, and this has " + std::to_string(count),
                 "leave out what is no face");
    for (std::int64_t i = 0; i < count && !body_->gave_up(); ++i)
        if (const std::optional<std::uint32_t> place = corner(*property.type);
            place && !is_too_long)
            corners_.push_back(*place);
}

std::optional<std::uint32_t> PlyReader::corner(const PlyType& type)
{
    const std::optional<std::int64_t> place = body_->whole_number(type);
    const auto count = static_cast<std::int64_t>(header_.element("vertex")->count);
    if (!place)
        return std::nullopt;
    if (*place >= 0 && *place < count)
        return static_cast<std::uint32_t>(*place);
    complain("corners on points that are not there",
             "there is no point " + std::to_string(*place) + ": the header counts " +
                 std::to_string(count) + ", from 0 on",
             "export the mesh as PLY again");
    return std::nullopt;
}

void PlyReader::pass_over(const PlyElement& element)
{
    for (std::size_t i = 0; i < element.count && !element.properties.empty(); ++i) {
        body_->begin_item([&] { return "`" + element.name + "` " + std::to_string(i); });
        for (const PlyProperty& property : element.properties)
            pass_over(property);
        body_->end_item();
    }
}

void PlyReader::pass_over(const PlyProperty& property)
{
    const std::int64_t count = property.is_list() ? length_of_list(property) : 1;
    for (std::int64_t i = 0; i < count && !body_->gave_up(); ++i)
        body_->pass_over(*property.type);
}

/// 0 after a complaint, and then the item is given up.
std::int64_t PlyReader::length_of_list(const PlyProperty& property)
{
    const std::optional<std::int64_t> length = body_->whole_number(*property.count_type);
    if (length && *length >= 0)
        return *length;
    if (length)
        complain("lists of negative length",
                 "a list cannot have " + std::to_string(*length) + " entries",
                 "export the mesh as PLY again");
    body_->give_up_item();
    return 0;
}

/// Of the number read last.
void PlyReader::complain(const std::string& kind, std::string what, std::string remedy)
{
    complaints_.add(kind, [&] {
        return Complaint{body_->place(), std::move(what), std::move(remedy)};
    });
}

} // namespace

bool looks_like_ply(std::string_view bytes)
{
    return bytes.starts_with("ply\n") || bytes.starts_with("ply\r");
}

MeshFile read_ply(std::string_view bytes, const std::string& name)
{
    return PlyReader(bytes, name).read();
}

} // namespace glim
