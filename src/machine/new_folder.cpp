#include "machine/new_folder.h"

#include "machine/checksum.h"
#include "machine/folder_swap.h"
#include "machine/whole_file.h"

#include <algorithm>
#include <fstream>
#include <map>
#include <optional>
#include <set>
#include <stdexcept>
#include <system_error>
#include <utility>

namespace glim {

namespace fs = std::filesystem;

namespace {

using Names = std::set<std::string, std::less<>>;
/// Checksums by name; empty where a marker of an older kind has none.
using Listed = std::map<std::string, std::string, std::less<>>;

constexpr std::string_view marker_head =
    "# Files that cornerglim wrote here and may replace. Others it leaves alone.";

constexpr std::size_t checksum_digits = 16;
constexpr std::string_view behind_checksum = "  ";

std::string marker_text(const Listed& names)
{
    std::string text = std::string(marker_head) + "\n";
    for (const auto& [name, checksum] : names)
        text += checksum + std::string(behind_checksum) + name + "\n";
    return text;
}

bool begins_with_checksum(const std::string& line)
{
    return line.find_first_not_of("0123456789abcdef") == checksum_digits &&
           line.compare(checksum_digits, behind_checksum.size(), behind_checksum) == 0;
}

/// What a marker file of ours lists; nothing if there is none.
std::optional<Listed> read_marker(const fs::path& path)
{
    std::ifstream file(path, std::ios::binary);
    std::string line;
    if (!std::getline(file, line) || line != marker_head)
        return std::nullopt;
    Listed names;
    while (std::getline(file, line))
        if (begins_with_checksum(line))
            names[line.substr(checksum_digits + behind_checksum.size())] =
                line.substr(0, checksum_digits);
        else
            names[line] = "";
    return names;
}

template <class Iterator>
Names names_below(const fs::path& folder, bool with_folders)
{
    Names names;
    for (const fs::directory_entry& entry : Iterator(folder))
        if (with_folders || entry.symlink_status().type() != fs::file_type::directory)
            names.insert(entry.path().lexically_relative(folder).generic_string());
    return names;
}

/// Something in `folder` that its marker does not list; empty if there is none. Under a marker,
/// folders by themselves hold nothing that could be lost.
std::string stranger_in(const fs::path& folder, const std::string& marker,
                        const std::optional<Listed>& listed)
{
    Names strangers = listed ? names_below<fs::recursive_directory_iterator>(folder, false)
                             : names_below<fs::directory_iterator>(folder, true);
    if (listed) {
        strangers.erase(marker);
        std::erase_if(strangers, [&](const std::string& name) { return listed->contains(name); });
    }
    return strangers.empty() ? std::string() : *strangers.begin();
}

/// A listed file that somebody has changed since; empty if there is none.
std::string changed_in(const fs::path& folder, const Listed& listed)
{
    for (const auto& [name, checksum] : listed)
        if (!checksum.empty() && fs::is_regular_file(folder / name) &&
            checksum_of_file(folder / name) != checksum)
            return name;
    return "";
}

bool holds(const fs::path& folder, const fs::path& inner)
{
    return std::mismatch(folder.begin(), folder.end(), inner.begin(), inner.end()).first ==
           folder.end();
}

void refuse_foreign(const fs::path& target, const std::string& marker)
{
    if (!fs::exists(fs::symlink_status(target)))
        return;
    if (!fs::is_directory(target))
        throw WriteRefused(target, "is there already and is no folder",
                           "name a new folder for the results");
    if (holds(fs::canonical(target), fs::current_path()))
        throw WriteRefused(target, "is the folder you are in, or one above it",
                           "name a new folder inside it");
    const std::optional<Listed> listed = read_marker(target / marker);
    const std::string stranger = stranger_in(target, marker, listed);
    if (!stranger.empty())
        throw WriteRefused(target,
                           "holds `" + stranger + "`, which was not written by this program",
                           "name a new folder, or move that file away first");
    const std::string changed = listed ? changed_in(target, *listed) : std::string();
    if (!changed.empty())
        throw WriteRefused(target,
                           "holds `" + changed + "`, which was changed after this program wrote it",
                           "name a new folder, or keep that file elsewhere first");
}

/// `path` in full, without links, dots or a slash at its end.
fs::path in_full(const fs::path& path)
{
    const fs::path full = fs::weakly_canonical(fs::absolute(path));
    return full.has_filename() ? full : full.parent_path();
}

/// Where nothing can be made, nobody should wait for the work first.
void make_hidden_folder(const fs::path& beside, const fs::path& target)
{
    std::error_code trouble;
    fs::create_directory(beside, trouble);
    if (!trouble)
        return;
    const fs::path above = beside.parent_path();
    if (trouble == std::errc::permission_denied || trouble == std::errc::operation_not_permitted ||
        trouble == std::errc::read_only_file_system)
        throw WriteRefused(target,
                           "cannot be made: nothing may be written in `" + above.string() + "`",
                           "name a folder where you may write");
    throw std::system_error(trouble, "cannot make a folder in " + above.string());
}

bool may_be_put(std::string_view name)
{
    const fs::path path(name);
    const bool plain = !name.empty() && name.front() != '#' && path.is_relative() &&
                       name.find_first_of(std::string_view("\n\r\0", 3)) == std::string_view::npos;
    return plain && path.lexically_normal().native() == name &&
           std::none_of(path.begin(), path.end(), [](const fs::path& part) {
               return part.empty() || part == "." || part == "..";
           });
}

} // namespace

NewFolder::NewFolder(const fs::path& target, std::string marker) : marker_(std::move(marker))
{
    if (target.empty())
        throw WriteRefused(target, "no folder is named", "name a folder for the results");
    nearest_folder(target);
    refuse_foreign(target, marker_);
    target_ = in_full(target);
    beside_ = free_path_beside(nearest_folder(target_) / target_.filename());
    make_hidden_folder(beside_, target);
}

NewFolder::~NewFolder()
{
    std::error_code ignored; // a destructor has nobody to tell
    fs::remove_all(beside_, ignored);
}

void NewFolder::put(std::string_view name, std::string_view bytes)
{
    if (!may_be_put(name) || name == marker_ || !names_.emplace(name, checksum_of(bytes)).second)
        throw std::invalid_argument("no name for a file of results: " + std::string(name));
    const fs::path path = beside_ / name;
    fs::create_directories(path.parent_path());
    write_new_file(path, bytes);
}

void NewFolder::commit()
{
    write_new_file(beside_ / marker_, marker_text(names_));
    refuse_foreign(target_, marker_);
    if (fs::exists(target_)) {
        fs::permissions(beside_, fs::status(target_).permissions());
        swap_folders(beside_, target_);
        fs::remove_all(beside_);
    } else {
        fs::create_directories(target_.parent_path());
        fs::rename(beside_, target_);
    }
}

} // namespace glim
