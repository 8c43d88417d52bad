#include "input/read_obj.h"

#include "geometry/triangulate.h"
#include "geometry/weld.h"
#include "input/capped_complaints.h"
#include "input/mesh_parts.h"
#include "input/number_word.h"
#include "input/obj_statements.h"
#include "input/polygon_limits.h"
#include "input/text_scanner.h"
#include "model/nearest_word.h"

#include <charconv>

namespace glim {

namespace {

constexpr TextRules obj_rules{.hash_begins_comment = true, .backslash_joins_lines = true};

constexpr const char* cut_short = "the file ends within this line: copy or export it again";

/// x y z, with a weight, with a colour, or with both.
bool is_count_of_point(std::size_t numbers)
{
    return numbers == 3 || numbers == 4 || numbers == 6 || numbers == 7;
}

/// A corner as written: the number of its point, then perhaps those of its texture and normal.
struct Corner {
    std::int64_t point = 0;
    std::string_view others; ///< from the first slash on
};

std::optional<std::int64_t> whole_number(std::string_view word)
{
    std::int64_t value = 0;
    const char* const end = word.data() + word.size();
    const auto [stop, error] = std::from_chars(word.data(), end, value);
    return stop == end && error == std::errc{} ? std::optional(value) : std::nullopt;
}

/// "/2", "//3" or "/2/3", or nothing.
bool are_other_numbers(std::string_view others)
{
    if (others.empty())
        return true;
    others.remove_prefix(1);
    const std::size_t slash = others.find('/');
    if (slash == std::string_view::npos)
        return whole_number(others).has_value();
    return (slash == 0 || whole_number(others.substr(0, slash))) &&
           whole_number(others.substr(slash + 1));
}

std::optional<std::int64_t> point_number(std::string_view word)
{
    const std::size_t slash = std::min(word.find('/'), word.size());
    if (!are_other_numbers(word.substr(slash)))
        return std::nullopt;
    return whole_number(word.substr(0, slash));
}

class ObjReader {
public:
    ObjReader(std::string_view text, const std::string& name)
        : text_(text), name_(name), scanner_(text, obj_rules), complaints_(name)
    {
    }

    MeshFile read();

private:
    void read_statement();
    void read_point(std::string_view keyword);
    double number(std::string_view word);
    void read_face(std::string_view keyword);
    std::optional<std::uint32_t> corner(std::string_view word);
    void add_polygon();
    std::string names();

    void complain(const std::string& kind, std::string_view word, std::string what,
                  std::string remedy);
    void refuse_count(std::string_view keyword, std::size_t count);
    void refuse_corners(std::string_view keyword, std::size_t count);
    void refuse_reference(std::string_view word, std::int64_t reference);
    void refuse_statement(std::string_view keyword);
    void refuse_other_file(std::string_view keyword);
    void refuse_if_no_face();

    std::string_view text_;
    const std::string& name_;
    TextScanner scanner_;
    CappedComplaints complaints_;
    MeshFile file_;
    MeshParts parts_;
    std::vector<std::uint32_t> corners_; ///< of the polygon at hand
    std::vector<Point> outline_;         ///< the same as places
};

MeshFile ObjReader::read()
{
    for (; !scanner_.at_end(); scanner_.end_line())
        read_statement();
    refuse_if_no_face();
    complaints_.throw_if_any();

    file_.format = "OBJ";
    file_.points_in_file = file_.mesh.points.size();
    file_.mesh = welded(file_.mesh);
    file_.parts = parts_.take();
    return std::move(file_);
}

void ObjReader::read_statement()
{
    const std::string_view keyword = scanner_.word();
    if (keyword.empty())
        return;
    switch (obj_statement(keyword)) {
    case ObjStatement::point:
        return read_point(keyword);
    case ObjStatement::face:
        return read_face(keyword);
    case ObjStatement::object:
        return parts_.set(&MeshPart::object, names());
    case ObjStatement::group:
        return parts_.set(&MeshPart::group, names());
    case ObjStatement::material:
        return parts_.set(&MeshPart::material, names());
    case ObjStatement::curved_surface:
        ++file_.curved_surfaces;
        return;
    case ObjStatement::other_file:
        return refuse_other_file(keyword);
    case ObjStatement::passed_over:
        return;
    case ObjStatement::unknown:
        return refuse_statement(keyword);
    }
}

void ObjReader::read_point(std::string_view keyword)
{
    Point point = Point::Zero();
    std::size_t count = 0;
    for (auto word = scanner_.word(); !word.empty(); word = scanner_.word(), ++count) {
        const double value = number(word);
        if (count >= 3)
            continue; // weight or colour
        point[static_cast<Eigen::Index>(count)] = value;
        file_.decimals = std::max(file_.decimals, significant_digits(word));
    }
    if (!is_count_of_point(count))
        refuse_count(keyword, count);
    // A bad point keeps its number, or every face after it would be complained of too.
    file_.mesh.points.push_back(point);
}

double ObjReader::number(std::string_view word)
{
    if (const std::optional<double> value = coordinate_in(word))
        return *value;
    NumberTrouble trouble = number_trouble(word);
    complain("numbers that cannot be used", word, trouble.what, trouble.remedy);
    return 0;
}

void ObjReader::read_face(std::string_view keyword)
{
    corners_.clear();
    std::size_t count = 0;
    for (auto word = scanner_.word(); !word.empty(); word = scanner_.word(), ++count)
        if (const std::optional<std::uint32_t> place = corner(word))
            corners_.push_back(*place);
    if (count < 3 || count > most_corners_of_a_face)
        refuse_corners(keyword, count);
    else if (corners_.size() == count)
        add_polygon();
}

/// The place of the corner's point, or a complaint.
std::optional<std::uint32_t> ObjReader::corner(std::string_view word)
{
    const std::optional<std::int64_t> reference = point_number(word);
    if (!reference) {
        complain("corners that cannot be read", word, "`" + shown(word) + "` is not a corner",
                 "write the number of a point, such as 7, 7/2, 7//3 or 7/2/3");
        return std::nullopt;
    }
    const auto count = static_cast<std::int64_t>(file_.mesh.points.size());
    const std::int64_t place = *reference > 0 ? *reference - 1 : count + *reference;
    if (*reference == 0 || place < 0 || place >= count) {
        refuse_reference(word, *reference);
        return std::nullopt;
    }
    return static_cast<std::uint32_t>(place);
}

void ObjReader::add_polygon()
{
    outline_.clear();
    for (const std::uint32_t corner : corners_)
        outline_.push_back(file_.mesh.points[corner]);
    std::optional<std::vector<Facet>> triangles = triangulated(outline_);
    if (!triangles) {
        ++file_.crossed_polygons;
        triangles = fan_of(corners_.size());
    }
    for (const Facet& t : *triangles) {
        file_.mesh.facets.push_back({corners_[t[0]], corners_[t[1]], corners_[t[2]]});
        file_.part_of_facet.push_back(parts_.current());
    }
    ++file_.polygons_in_file;
}

/// All names of the line, one blank between them.
std::string ObjReader::names()
{
    std::string all;
    for (auto word = scanner_.word(); !word.empty(); word = scanner_.word())
        all += (all.empty() ? "" : " ") + std::string(word);
    return all;
}

void ObjReader::complain(const std::string& kind, std::string_view word, std::string what,
                         std::string remedy)
{
    complaints_.add(kind, [&] {
        return Complaint{place_in(text_, name_, word), std::move(what), std::move(remedy)};
    });
}

void ObjReader::refuse_count(std::string_view keyword, std::size_t count)
{
    const bool is_cut = count < 3 && is_on_unfinished_line(text_, keyword);
    complain("points with a wrong count of numbers", keyword,
             "a point needs 3 numbers, and this has " + std::to_string(count),
             is_cut ? cut_short : "write x, y and z; a weight or a colour may follow");
}

void ObjReader::refuse_corners(std::string_view keyword, std::size_t count)
{
    const std::string what = " corners, and this has " + std::to_string(count);
    if (count > 3)
        return complain("faces with too many corners", keyword,
                        "a face may have " + std::to_string(most_corners_of_a_face) + what,
                        "let the export cut it into triangles");
    complain("faces with too few corners", keyword, "a face needs 3" + what,
             is_on_unfinished_line(text_, keyword)
                 ? cut_short
                 : "write a line as `l`, or leave it out: only faces are looked at");
}

void ObjReader::refuse_reference(std::string_view word, std::int64_t reference)
{
    const std::size_t count = file_.mesh.points.size();
    const std::string points =
        count == 1 ? "only 1 point stands" : "only " + std::to_string(count) + " points stand";
    complain("corners on points that are not there", word,
             reference == 0 ? "there is no point 0"
                            : "there is no point " + std::to_string(reference) + ": " + points +
                                  " before this face",
             reference == 0 ? "points are counted from 1, or from -1 backwards"
                            : "write every point before the faces that use it");
}

void ObjReader::refuse_statement(std::string_view keyword)
{
    const std::optional<std::string> nearest = nearest_word(shown(keyword), obj_words());
    complain("unknown statements", keyword, "`" + shown(keyword) + "` is no statement of OBJ",
             nearest ? "did you mean `" + *nearest + "`?"
                     : "export the mesh as OBJ again, or begin the line with # if it is a comment");
}

void ObjReader::refuse_other_file(std::string_view keyword)
{
    complain("statements that call for other files", keyword,
             "`" + shown(keyword) + "` calls for another file, and none is opened from here",
             "export the mesh as one file");
}

void ObjReader::refuse_if_no_face()
{
    if (!file_.mesh.facets.empty() || !complaints_.empty())
        return;
    const bool is_curved = file_.curved_surfaces > 0;
    complaints_.add("", [&] {
        return Complaint{
            {.file = name_, .line = 0, .column = 0, .byte = {}},
            is_curved ? "only free-form surfaces are in this file, and they are not read"
                      : "there is no face in this file",
            is_curved ? "export them as triangles"
                      : "export the surfaces as a mesh; points and lines hide nothing"};
    });
}

} // namespace

bool looks_like_obj(std::string_view text)
{
    if (!looks_like_text(text))
        return false;
    for (TextScanner scanner(text, obj_rules); !scanner.at_end(); scanner.end_line())
        if (const std::string_view word = scanner.word(); !word.empty())
            return obj_statement(word) != ObjStatement::unknown;
    return false;
}

MeshFile read_obj(std::string_view text, const std::string& name)
{
    return ObjReader(text, name).read();
}

} // namespace glim
