#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <variant>

namespace glim {

/// Why a path that somebody gave does not lead to bytes.
enum class FileTrouble {
    missing,
    is_folder,
    not_a_file,  ///< a device, a pipe, a socket
    not_allowed, ///< the file or a folder on the way may not be read
    too_large,
};

/// The whole file, if it is an ordinary one of at most `most_bytes`; a link is followed.
/// Throws std::runtime_error with the path if the disk fails in the middle of reading.
std::variant<std::string, FileTrouble> file_bytes(const std::filesystem::path& file,
                                                  std::size_t most_bytes);

} // namespace glim
