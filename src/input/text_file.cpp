#include "input/text_file.h"

#include "machine/file_bytes.h"
#include "model/nearest_word.h"

#include <algorithm>
#include <system_error>

namespace glim {

namespace {

/// A study has some kilobytes; what is larger than this is something else.
constexpr std::size_t most_text_bytes = 16 << 20;

Complaint complaint_about(const std::filesystem::path& file, FileTrouble trouble, const Place& at)
{
    const std::string name = "`" + file.string() + "`";
    switch (trouble) {
    case FileTrouble::missing:
        return {at, "there is no file " + name, remedy_for_missing(file)};
    case FileTrouble::is_folder:
        return {at, name + " is a folder", "name a file in it"};
    case FileTrouble::not_a_file:
        return {at, name + " is no ordinary file", "save the text as a file first"};
    case FileTrouble::not_allowed:
        return {at, name + " may not be read", "ask its owner for the right to read it"};
    case FileTrouble::too_large:
        break;
    }
    return {at, name + " is larger than any study or table", "name the TOML file itself"};
}

} // namespace

std::string read_text_file(const std::filesystem::path& file, const Place& asked_at)
{
    std::variant<std::string, FileTrouble> bytes = file_bytes(file, most_text_bytes);
    if (const FileTrouble* trouble = std::get_if<FileTrouble>(&bytes)) {
        const Place at = asked_at.file.empty() ? Place{file.string(), 0, 0, {}} : asked_at;
        throw InputError({complaint_about(file, *trouble, at)});
    }
    return std::get<std::string>(std::move(bytes));
}

std::string remedy_for_missing(const std::filesystem::path& file)
{
    const std::filesystem::path folder = file.has_parent_path() ? file.parent_path() : ".";
    std::error_code trouble;
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder, trouble))
        names.push_back(entry.path().filename().string());
    if (trouble)
        return "there is no readable folder `" + folder.string() + "` either";
    // The system lists a folder in no promised order.
    std::sort(names.begin(), names.end());
    if (const auto nearest = nearest_word(file.filename().string(), names))
        return "did you mean `" + *nearest + "`?";
    return "put it there, or correct the name";
}

} // namespace glim
