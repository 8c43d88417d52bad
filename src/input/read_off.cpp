#include "input/read_off.h"

#include "input/capped_complaints.h"
#include "input/mesh_of_polygons.h"
#include "input/number_word.h"
#include "input/polygon_limits.h"
#include "input/text_scanner.h"

#include <algorithm>
#include <charconv>
#include <optional>

namespace glim {

namespace {

constexpr TextRules off_rules{.hash_begins_comment = true, .backslash_joins_lines = false};
constexpr int digits_of_float = 7;
constexpr const char* cut_short = "the file was cut short: copy or export it again";
constexpr const char* export_again = "export the mesh as OFF again";

/// What each point has besides its place, told by the letters before `OFF`.
struct PointExtras {
    std::size_t least = 0; ///< numbers
    std::size_t most = 0;
};

std::optional<PointExtras> extras_of(std::string_view keyword)
{
    PointExtras extras;
    const auto take = [&](std::string_view letters, std::size_t least, std::size_t most) {
        if (!keyword.starts_with(letters))
            return;
        keyword.remove_prefix(letters.size());
        extras = {extras.least + least, extras.most + most};
    };
    take("ST", 2, 2);
    take("C", 3, 4);
    take("N", 3, 3);
    return keyword == "OFF" ? std::optional(extras) : std::nullopt;
}

std::optional<std::int64_t> whole_number(std::string_view word)
{
    std::int64_t value = 0;
    const char* const end = word.data() + word.size();
    const auto [stop, error] = std::from_chars(word.data(), end, value);
    return stop == end && error == std::errc{} ? std::optional(value) : std::nullopt;
}

class OffReader {
public:
    OffReader(std::string_view text, const std::string& name)
        : text_(text), name_(name), scanner_(text, off_rules), complaints_(name)
    {
    }

    MeshFile read();

private:
    void read_counts();
    std::size_t read_count(const std::string& of);
    void read_point(std::size_t i);
    void read_face(std::size_t i);
    void read_corner(std::string_view word);
    void go_to_line(const std::string& words);
    void check_end();
    void complain(const std::string& kind, std::string_view word, std::string what,
                  std::string remedy);
    Place place_of(std::string_view word) const { return place_in(text_, name_, word); }

    std::string_view text_;
    const std::string& name_;
    TextScanner scanner_;
    CappedComplaints complaints_;
    PlainPly plain_;
    PointExtras extras_;
    std::size_t points_ = 0;
    std::size_t faces_ = 0;
    int digits_ = 0;
    std::vector<std::uint32_t> corners_; ///< of the face at hand
};

MeshFile OffReader::read()
{
    go_to_line("the word OFF");
    const std::string_view keyword = scanner_.word();
    const std::optional<PointExtras> extras = extras_of(keyword);
    if (!extras)
        refuse(place_of(keyword), "the first word is `" + shown(keyword) + "`, and OFF is read",
               export_again);
    extras_ = *extras;
    read_counts();
    for (std::size_t i = 0; i < points_; ++i)
        read_point(i);
    for (std::size_t i = 0; i < faces_; ++i)
        read_face(i);
    check_end();
    complaints_.throw_if_any();

    MeshFile file = mesh_of_polygons(plain_, {MeshPart{}},
                                     std::vector<std::uint32_t>(plain_.faces(), 0), name_);
    file.format = "OFF";
    file.decimals = std::min(digits_, digits_of_float);
    return file;
}

/// Points, faces and perhaps edges, on the line of the word OFF or on the next one.
void OffReader::read_counts()
{
    const TextScanner after_keyword = scanner_;
    if (scanner_.word().empty()) {
        scanner_.end_line();
        go_to_line("its counts");
    } else {
        scanner_ = after_keyword;
    }
    points_ = read_count("points");
    faces_ = read_count("faces");
    scanner_.end_line();
    if (faces_ == 0)
        refuse(Place{name_, 0, 0, {}}, "there is no face in this file",
               "export the surfaces as a mesh; points alone hide nothing");
}

std::size_t OffReader::read_count(const std::string& of)
{
    const std::string_view word = scanner_.word();
    const std::optional<std::int64_t> count = whole_number(word);
    if (!count || *count < 0 || *count > std::int64_t{0xffffffff})
        refuse(place_of(word), "`" + shown(word) + "` is no count of " + of,
               word == "BINARY" ? "binary OFF is not read: export the mesh as OFF text"
                                : "write the counts of points, faces and edges after OFF");
    return static_cast<std::size_t>(*count);
}

void OffReader::read_point(std::size_t i)
{
    go_to_line("point " + std::to_string(i));
    Point point = Point::Zero();
    std::size_t count = 0;
    std::string_view word = scanner_.word();
    const std::string_view first = word;
    for (; !word.empty(); word = scanner_.word(), ++count) {
        if (count >= 3)
            continue;
        const std::optional<double> value = coordinate_in(word);
        if (!value) {
            const NumberTrouble trouble = number_trouble(word);
            complain("numbers that cannot be used", word, trouble.what, trouble.remedy);
        }
        point[static_cast<Eigen::Index>(count)] = value.value_or(0);
        digits_ = std::max(digits_, significant_digits(word));
    }
    if (count < 3 + extras_.least || count > 3 + extras_.most)
        complain("points with a wrong count of numbers", first,
                 "point " + std::to_string(i) + " needs " + std::to_string(3 + extras_.least) +
                     " numbers, and this line has " + std::to_string(count),
                 is_on_unfinished_line(text_, first)
                     ? cut_short
                     : "write one point a line; what each has besides x, y and z is said by the "
                       "letters before OFF");
    plain_.add_point(point);
    scanner_.end_line();
}

void OffReader::read_face(std::size_t i)
{
    go_to_line("face " + std::to_string(i));
    corners_.clear();
    const std::string_view first = scanner_.word();
    const std::optional<std::int64_t> count = whole_number(first);
    if (!count || *count < 3 || *count > static_cast<std::int64_t>(most_corners_of_a_face)) {
        complain("faces with a wrong count of corners", first,
                 "a face has 3 to " + std::to_string(most_corners_of_a_face) +
                     " corners, and this one `" + shown(first) + "`",
                 "write the count of corners, then the points, counted from 0");
        return scanner_.end_line();
    }
    for (std::int64_t c = 0; c < *count; ++c) {
        const std::string_view word = scanner_.word();
        if (word.empty()) {
            complain("faces that lack corners", word,
                     "face " + std::to_string(i) + " lacks corners: it counts " +
                         std::to_string(*count) + " and has " + std::to_string(c),
                     is_on_unfinished_line(text_, word) ? cut_short : export_again);
            break;
        }
        read_corner(word);
    }
    plain_.add_face(corners_);
    scanner_.end_line();
}

void OffReader::read_corner(std::string_view word)
{
    const std::optional<std::int64_t> place = whole_number(word);
    if (!place)
        complain("corners that cannot be read", word, "`" + shown(word) + "` is not a corner",
                 "write the number of a point, counted from 0");
    else if (*place < 0 || *place >= static_cast<std::int64_t>(points_))
        complain("corners on points that are not there", word,
                 "there is no point " + std::to_string(*place) + ": the header counts " +
                     std::to_string(points_) + ", from 0 on",
                 export_again);
    else
        corners_.push_back(static_cast<std::uint32_t>(*place));
}

/// Over lines without a word. Refuses a file that ends before.
void OffReader::go_to_line(const std::string& words)
{
    TextScanner ahead = scanner_;
    while (!ahead.at_end() && ahead.word().empty()) {
        ahead.end_line();
        scanner_ = ahead;
    }
    if (scanner_.at_end())
        complaints_.refuse({Place{name_, 0, 0, {}}, "the file ends before " + words, cut_short});
}

void OffReader::check_end()
{
    for (; !scanner_.at_end(); scanner_.end_line())
        if (const std::string_view word = scanner_.word(); !word.empty())
            return complain("", word, "there is more in the file than its counts say",
                            export_again);
}

void OffReader::complain(const std::string& kind, std::string_view word, std::string what,
                         std::string remedy)
{
    complaints_.add(kind, [&] {
        return Complaint{place_of(word), std::move(what), std::move(remedy)};
    });
}

} // namespace

bool looks_like_off(std::string_view bytes)
{
    if (!looks_like_text(bytes))
        return false;
    for (TextScanner scanner(bytes, off_rules); !scanner.at_end(); scanner.end_line())
        if (const std::string_view word = scanner.word(); !word.empty())
            return extras_of(word).has_value();
    return false;
}

MeshFile read_off(std::string_view text, const std::string& name)
{
    return OffReader(text, name).read();
}

} // namespace glim
