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
std::string stranger_in(const fs::path& folder, const std::optional<FolderMarker>& marker)
{
    Names strangers = marker ? names_below<fs::recursive_directory_iterator>(folder, false)
                             : names_below<fs::directory_iterator>(folder, true);
    if (marker) {
        strangers.erase(std::string(folder_marker_name));
        std::erase_if(strangers,
                      [&](const std::string& name) { return marker->files.contains(name); });
    }
    return strangers.empty() ? std::string() : *strangers.begin();
}

/// A listed file that somebody has changed since; empty if there is none.
std::string changed_in(const fs::path& folder, const FolderMarker& marker)
{
    for (const auto& [name, checksum] : marker.files)
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

void refuse_other_work(const fs::path& target, const std::string& by)
{
    const std::optional<FolderMarker> marker = read_folder_marker(target);
    const std::string stranger = stranger_in(target, marker);
    if (!stranger.empty())
        throw WriteRefused(target,
                           "holds `" + stranger + "`, which was not written by this program",
                           "name a new folder, or move that file away first");
    if (!marker)
        return;
    if (!marker->by.empty() && !by.empty() && marker->by != by)
        throw WriteRefused(target, "holds what `cornerglim " + marker->by + "` wrote",
                           "name a new folder, or remove that one first");
    const std::string changed = changed_in(target, *marker);
    if (!changed.empty())
        throw WriteRefused(target,
                           "holds `" + changed + "`, which was changed after this program wrote it",
                           "name a new folder, or keep that file elsewhere first");
}

void refuse_foreign(const fs::path& target, const std::string& by)
{
    if (!fs::exists(fs::symlink_status(target)))
        return;
    if (!fs::is_directory(target))
        throw WriteRefused(target, "is there already and is no folder",
                           "name a new folder for the results");
    if (holds(fs::canonical(target), fs::current_path()))
        throw WriteRefused(target, "is the folder you are in, or one above it",
                           "name a new folder inside it");
    refuse_other_work(target, by);
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

NewFolder::NewFolder(const fs::path& target, std::string by)
{
    if (target.empty())
        throw WriteRefused(target, "no folder is named", "name a folder for the results");
    nearest_folder(target);
    refuse_foreign(target, by);
    marker_.by = std::move(by);
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
    if (!may_be_put(name) || name == folder_marker_name ||
        !marker_.files.emplace(name, checksum_of(bytes)).second)
        throw std::invalid_argument("no name for a file of results: " + std::string(name));
    const fs::path path = beside_ / name;
    fs::create_directories(path.parent_path());
    write_new_file(path, bytes);
}

void NewFolder::commit()
{
    write_new_file(beside_ / folder_marker_name, marker_.text());
    refuse_foreign(target_, marker_.by);
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
