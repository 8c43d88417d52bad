#include "input/foreign_file.h"

#include <algorithm>
#include <array>

namespace glim {

namespace {

using namespace std::string_view_literals;

constexpr std::string_view unpack = "unpack it first, and name the file inside";
constexpr std::string_view fetch = "fetch the file itself: this is what a server showed instead";
constexpr std::string_view as_mesh = "export the mesh as OBJ, STL, PLY or OFF";
constexpr std::string_view as_utf8 = "save the text as UTF-8";

// Begins of text are in lower case.
constexpr std::array rows = {
    ForeignFile{"\x1f\x8b"sv, "a packed file (gzip)", unpack},
    ForeignFile{"PK\x03\x04"sv, "a packed file (zip)", unpack},
    ForeignFile{"BZh"sv, "a packed file (bzip2)", unpack},
    ForeignFile{"\xfd\x37zXZ\0"sv, "a packed file (xz)", unpack},
    ForeignFile{"\x28\xb5\x2f\xfd"sv, "a packed file (zstd)", unpack},
    ForeignFile{"7z\xbc\xaf\x27\x1c"sv, "a packed file (7z)", unpack},
    ForeignFile{"<!doctype html"sv, "a page of the web (HTML)", fetch},
    ForeignFile{"<html"sv, "a page of the web (HTML)", fetch},
    ForeignFile{"<?xml"sv, "XML", as_mesh},
    ForeignFile{"iso-10303-21;"sv, "STEP, which has curved faces", as_mesh},
    ForeignFile{"glTF\x02"sv, "glTF", as_mesh},
    ForeignFile{"{"sv, "JSON", as_mesh},
    ForeignFile{"%pdf-"sv, "a PDF document", as_mesh},
    ForeignFile{"\x89PNG"sv, "a PNG picture", as_mesh},
    ForeignFile{"\xff\xd8\xff"sv, "a JPEG picture", as_mesh},
    ForeignFile{"\xff\xfe"sv, "text in UTF-16", as_utf8},
    ForeignFile{"\xfe\xff"sv, "text in UTF-16", as_utf8},
};

char in_lower_case(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool begins_with_text(std::string_view bytes, std::string_view begin)
{
    constexpr std::string_view skipped = "\xef\xbb\xbf \t\r\n";
    bytes.remove_prefix(std::min(bytes.find_first_not_of(skipped), bytes.size()));
    bytes = bytes.substr(0, begin.size());
    return std::equal(bytes.begin(), bytes.end(), begin.begin(), begin.end(),
                      [](char a, char b) { return in_lower_case(a) == b; });
}

} // namespace

std::optional<ForeignFile> foreign_file(std::string_view bytes)
{
    for (const ForeignFile& row : rows)
        if (bytes.starts_with(row.begins_with) || begins_with_text(bytes, row.begins_with))
            return row;
    return std::nullopt;
}

} // namespace glim
