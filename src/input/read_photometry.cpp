#include "input/read_photometry.h"

#include "input/foreign_file.h"
#include "input/read_ies.h"
#include "input/read_ldt.h"
#include "input/text_file.h"
#include "input/text_scanner.h"
#include "model/nearest_word.h"

#include <algorithm>

namespace glim {

namespace {

constexpr std::array formats = {
    PhotometryFormat{".ies", "LM-63"},
    PhotometryFormat{".ldt", "EULUMDAT"},
};

const PhotometryFormat* format_of(const std::filesystem::path& file)
{
    std::string ending = file.extension().string();
    for (char& c : ending)
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    const auto* const found = std::find_if(formats.begin(), formats.end(), [&](const auto& format) {
        return format.ending == ending;
    });
    return found == formats.end() ? nullptr : found;
}

constexpr const char* name_the_file = "name the LM-63 or EULUMDAT file itself";

std::string endings_words()
{
    std::vector<std::string> endings;
    endings.reserve(formats.size());
    for (const PhotometryFormat& format : formats)
        endings.emplace_back(format.ending);
    return listed(endings, "or");
}

/// A name with a folder in it could lead anywhere: a file from elsewhere names files beside it
/// only.
TiltLookup beside(const std::filesystem::path& file)
{
    return [folder = file.parent_path()](const std::string& name) -> std::optional<std::string> {
        const std::filesystem::path path(name);
        const std::filesystem::path found = folder / path;
        std::error_code trouble;
        if (path != path.filename() || !std::filesystem::is_regular_file(found, trouble))
            return std::nullopt;
        return read_text_file(found);
    };
}

} // namespace

std::span<const PhotometryFormat> photometry_formats() { return formats; }

bool names_photometry(const std::filesystem::path& file) { return format_of(file) != nullptr; }

PhotometryFile read_photometry(const std::filesystem::path& file, const std::string& name)
{
    const Place place{name, 0, 0, {}};
    const PhotometryFormat* const format = format_of(file);
    if (!format)
        refuse(place, "the name of a photometric file ends in " + endings_words(),
               "export it as one of them");
    const std::string text = read_text_file(file, place);
    if (text.empty())
        refuse(place, "this file is empty", "copy or export it again");
    if (const std::optional<ForeignFile> foreign = foreign_file(text))
        refuse(place, "this is " + std::string(foreign->what) + " and no photometric file",
               name_the_file);
    if (!looks_like_text(text))
        refuse(place, "this is no text, and so no photometric file", name_the_file);
    return format->ending == ".ies" ? read_ies(text, name, beside(file)) : read_ldt(text, name);
}

} // namespace glim
