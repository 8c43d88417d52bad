#pragma once

#include "machine/folder_marker.h"

namespace glim {

/// A folder of results that appears whole or not at all.
///
///     NewFolder folder("build/demo/theme-a");
///     folder.put("result.json", bytes);
///     folder.put("pictures/front.svg", more);
///     folder.commit();
///
/// Files go to a hidden folder beside the target until commit() swaps it in. Without commit()
/// nothing has changed and the hidden folder is gone; only a process killed outright leaves it.
/// A marker file in the folder lists what the program wrote, with checksums: so it knows what it
/// may replace, and that somebody has worked on one of the files since.
class NewFolder {
public:
    /// `by` is the command that writes it. Throws WriteRefused, before anything is written, if
    /// `target` is there and is no folder, is a link to nothing, holds the folder the program was
    /// started in, holds a file that the marker does not list (then it is somebody else's) or that
    /// was changed since, or was written by another command. A link to a folder is followed. Throws
    /// std::system_error if the machine refuses.
    explicit NewFolder(const std::filesystem::path& target, std::string by = {});
    ~NewFolder();
    NewFolder(const NewFolder&) = delete;
    NewFolder& operator=(const NewFolder&) = delete;

    /// Writes one file. `name` is relative, with `/` between folders, none of them `.` or `..`, on
    /// one line, not beginning with `#`, not the marker and not put before; anything else is our
    /// own mistake and throws std::invalid_argument, so that no name ever leads out of the folder.
    void put(std::string_view name, std::string_view bytes);

    /// Writes the marker and puts the folder in place of what was there, with the permissions that
    /// one had, and removes the old one. Throws as the constructor does if somebody has added a
    /// file meanwhile. To be called once, last.
    void commit();

private:
    std::filesystem::path target_;
    FolderMarker marker_;
    std::filesystem::path beside_; ///< where files go; after commit() what is to be removed
};

} // namespace glim
