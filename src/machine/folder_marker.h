#pragma once

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace glim {

/// The name of the file by which a folder of results is known again.
inline constexpr std::string_view folder_marker_name = ".cornerglim";

/// What that file says.
struct FolderMarker {
    std::string by; ///< the command that wrote the folder; empty: it does not say
    /// Checksums by name of file; empty where an older marker has none.
    std::map<std::string, std::string, std::less<>> files;

    std::string text() const;
};

/// The marker of a folder of ours; nothing if there is none.
std::optional<FolderMarker> read_folder_marker(const std::filesystem::path& folder);

} // namespace glim
