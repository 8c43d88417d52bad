#include "input/ply_header.h"

#include "input/text_scanner.h"
#include "model/nearest_word.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>

namespace glim {

namespace {

constexpr std::array types = {
    PlyType{"char", "int8", 1, true, true},      PlyType{"uchar", "uint8", 1, true, false},
    PlyType{"short", "int16", 2, true, true},    PlyType{"ushort", "uint16", 2, true, false},
    PlyType{"int", "int32", 4, true, true},      PlyType{"uint", "uint32", 4, true, false},
    PlyType{"float", "float32", 4, false, true}, PlyType{"double", "float64", 8, false, true},
};

struct EncodingWord {
    std::string_view word;
    PlyEncoding encoding;
};
constexpr std::array encodings = {
    EncodingWord{"ascii", PlyEncoding::text},
    EncodingWord{"binary_little_endian", PlyEncoding::little_endian},
    EncodingWord{"binary_big_endian", PlyEncoding::big_endian},
};

constexpr const char* export_again = "copy or export it again";

std::optional<std::size_t> count_in(std::string_view word)
{
    std::uint32_t value = 0;
    const char* const end = word.data() + word.size();
    const auto [stop, error] = std::from_chars(word.data(), end, value);
    return stop == end && error == std::errc{} ? std::optional<std::size_t>(value) : std::nullopt;
}

std::vector<std::string> type_words()
{
    std::vector<std::string> words;
    for (const PlyType& type : types) {
        words.emplace_back(type.word);
        words.emplace_back(type.other_word);
    }
    return words;
}

/// Just the header, with the end of its last line; nothing if it has no end.
std::optional<std::string_view> header_in(std::string_view bytes)
{
    constexpr std::string_view last = "end_header";
    for (std::size_t at = bytes.find(last); at != std::string_view::npos;
         at = bytes.find(last, at + 1)) {
        const bool begins_line = bytes[at - 1] == '\n' || bytes[at - 1] == '\r';
        std::size_t end = at + last.size();
        while (end < bytes.size() && (bytes[end] == ' ' || bytes[end] == '\t'))
            ++end;
        if (!begins_line || (end < bytes.size() && bytes[end] != '\n' && bytes[end] != '\r'))
            continue;
        const bool ends_with_two = bytes.substr(3).starts_with("\r\n");
        end += ends_with_two ? 2 : 1;
        return bytes.substr(0, std::min(end, bytes.size()));
    }
    return std::nullopt;
}

class HeaderReader {
public:
    HeaderReader(std::string_view text, const std::string& name)
        : text_(text), name_(name), scanner_(text)
    {
    }

    PlyHeader read();

private:
    void read_statement(std::string_view keyword);
    void read_format(std::string_view keyword);
    void read_element(std::string_view keyword);
    void read_property(std::string_view keyword);
    const PlyType* type();
    void check();
    void check_points();
    void check_faces();
    void complain(std::string_view at, std::string what, std::string remedy)
    {
        complaints_.add(place_in(text_, name_, at), std::move(what), std::move(remedy));
    }
    void complain(std::string what, std::string remedy)
    {
        complaints_.add({.file = name_, .line = 0, .column = 0, .byte = {}}, std::move(what),
                        std::move(remedy));
    }

    std::string_view text_;
    const std::string& name_;
    TextScanner scanner_;
    Complaints complaints_;
    PlyHeader header_;
    bool format_seen_ = false;
};

PlyHeader HeaderReader::read()
{
    for (; !scanner_.at_end(); scanner_.end_line())
        if (const std::string_view keyword = scanner_.word(); !keyword.empty())
            read_statement(keyword);
    if (complaints_.empty())
        check();
    complaints_.throw_if_any();
    header_.size = text_.size();
    return std::move(header_);
}

void HeaderReader::read_statement(std::string_view keyword)
{
    if (keyword == "format")
        return read_format(keyword);
    if (keyword == "element")
        return read_element(keyword);
    if (keyword == "property")
        return read_property(keyword);
    const std::vector<std::string> known = {"format",   "element",    "property", "comment",
                                            "obj_info", "end_header", "ply"};
    if (std::find(known.begin(), known.end(), keyword) == known.end())
        complain(keyword, "`" + shown(keyword) + "` is no statement of a PLY header",
                 did_you_mean(shown(keyword), known));
}

void HeaderReader::read_format(std::string_view keyword)
{
    const std::string_view word = scanner_.word();
    const auto found = std::find_if(encodings.begin(), encodings.end(),
                                    [&](const EncodingWord& e) { return e.word == word; });
    format_seen_ = true;
    if (found != encodings.end())
        header_.encoding = found->encoding;
    else
        complain(word.empty() ? keyword : word, "`" + shown(word) + "` is no format of PLY",
                 did_you_mean(shown(word), {"ascii", "binary_little_endian", "binary_big_endian"}));
    const std::string_view version = scanner_.word();
    if (version != "1.0")
        complain(version, "the version of the format is `" + shown(version) + "`, and 1.0 is read",
                 "export the mesh as PLY 1.0");
}

void HeaderReader::read_element(std::string_view keyword)
{
    const std::string element(scanner_.word());
    const std::string_view word = scanner_.word();
    const std::optional<std::size_t> count = count_in(word);
    if (!count)
        complain(word.empty() ? keyword : word, "`" + shown(word) + "` is no count of elements",
                 "write a whole number, such as element vertex 8");
    if (header_.element(element))
        complain(keyword, "the element `" + shown(element) + "` is there twice",
                 "export the mesh as PLY again");
    header_.elements.push_back({element, count.value_or(0), {}});
}

void HeaderReader::read_property(std::string_view keyword)
{
    if (header_.elements.empty())
        return complain(keyword, "this property stands before the first element",
                        "write the element that it belongs to before it");
    PlyProperty property;
    const TextScanner before = scanner_;
    const bool is_list = scanner_.word() == "list";
    if (!is_list)
        scanner_ = before;
    property.count_type = is_list ? type() : nullptr;
    property.type = type();
    property.name = scanner_.word();
    if (property.name.empty())
        complain(keyword, "this property has no name", "export the mesh as PLY again");
    if (property.count_type && !property.count_type->is_whole)
        complain(keyword,
                 "a list cannot be counted in `" + std::string(property.count_type->word) + "`",
                 "count it in whole numbers, such as uchar");
    header_.elements.back().properties.push_back(std::move(property));
}

const PlyType* HeaderReader::type()
{
    const std::string_view word = scanner_.word();
    const auto found = std::find_if(types.begin(), types.end(), [&](const PlyType& t) {
        return t.word == word || t.other_word == word;
    });
    if (found != types.end())
        return &*found;
    complain(word, "`" + shown(word) + "` is no type of PLY",
             did_you_mean(shown(word), type_words()));
    return nullptr;
}

void HeaderReader::check()
{
    if (!format_seen_)
        complain("the header does not say its format", export_again);
    check_points();
    const PlyElement* const strips = header_.element("tristrips");
    if (strips && strips->count > 0)
        complain("triangle strips are in this file, and they are not read", "export them as faces");
    else
        check_faces();
}

void HeaderReader::check_points()
{
    const PlyElement* const points = header_.element("vertex");
    if (!points)
        return complain("the header has no element `vertex`", "export the mesh as PLY again");
    for (const std::string_view axis : {"x", "y", "z"}) {
        const std::size_t place = points->place_of(axis);
        if (place == points->properties.size() || points->properties[place].is_list())
            complain("the points have no property `" + std::string(axis) + "`",
                     "write x, y and z as single numbers");
    }
}

void HeaderReader::check_faces()
{
    const PlyElement* const faces = header_.element("face");
    if (!faces || faces->count == 0)
        return complain("there is no face in this file",
                        "export the surfaces as a mesh; points alone hide nothing");
    const auto& all = faces->properties;
    const auto corners = std::find_if(all.begin(), all.end(), is_corner_list);
    if (corners == all.end())
        complain("the faces have no list `vertex_indices`", "export the mesh as PLY again");
    else if (!corners->type->is_whole)
        complain("the corners of faces are not counted in whole numbers",
                 "write them as property list uchar int vertex_indices");
}

} // namespace

std::size_t PlyElement::place_of(std::string_view property) const
{
    const auto found = std::find_if(properties.begin(), properties.end(),
                                    [&](const PlyProperty& p) { return p.name == property; });
    return static_cast<std::size_t>(found - properties.begin());
}

const PlyElement* PlyHeader::element(std::string_view name) const
{
    const auto found = std::find_if(elements.begin(), elements.end(),
                                    [&](const PlyElement& e) { return e.name == name; });
    return found == elements.end() ? nullptr : &*found;
}

bool is_corner_list(const PlyProperty& property)
{
    return property.is_list() &&
           (property.name == "vertex_indices" || property.name == "vertex_index");
}

PlyHeader read_ply_header(std::string_view bytes, const std::string& name)
{
    const std::optional<std::string_view> header = header_in(bytes);
    if (!header)
        refuse(Place{name, 0, 0, {}}, "the header has no line `end_header`",
               "the file was cut short: copy or export it again");
    return HeaderReader(*header, name).read();
}

} // namespace glim
