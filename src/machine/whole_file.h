#pragma once

#include <filesystem>
#include <stdexcept>
#include <string>
#include <string_view>

namespace glim {

/// Where the user asked us to write, we must not: their doing, so that it ends as bad input does.
/// `reason` and `remedy` are one sentence each without a full stop.
struct WriteRefused : std::runtime_error {
    WriteRefused(std::filesystem::path path, std::string reason, std::string remedy);

    std::filesystem::path path;
    std::string reason;
    std::string remedy;
};

/// Makes the file `path` and writes `bytes` to it; the file has the permissions the user's umask
/// allows. Throws std::system_error, naming the path, if it is there already, if its folder is
/// missing, or if the machine cannot write; what was begun is then removed.
void write_new_file(const std::filesystem::path& path, std::string_view bytes);

enum class IfThere {
    refuse, ///< an existing file stays as it is
    replace ///< an existing file makes way, whole for whole
};

/// Writes `bytes` to `path` so that a reader finds the whole file or what was there before, never
/// a part. The folder of `path` is made if it is missing. A link is followed: the file it leads to
/// is replaced. Throws WriteRefused if something is there and `if_there` says refuse, or if it is
/// no regular file, or if it would lie below a file; std::system_error if the machine cannot write.
void write_file_atomically(const std::filesystem::path& path, std::string_view bytes,
                           IfThere if_there = IfThere::refuse);

/// The nearest folder above `path` that exists. Throws WriteRefused if that is no folder.
std::filesystem::path nearest_folder(const std::filesystem::path& path);

/// A path beside `path` that nothing has: hidden, and with this process's number in it.
std::filesystem::path free_path_beside(const std::filesystem::path& path);

} // namespace glim
