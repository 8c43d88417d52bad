#pragma once

#include <filesystem>

namespace glim {

/// Two folders on one file system change places: afterwards each path leads to what the other led
/// to. In one step, where the file system can; nobody then ever finds either path empty.
/// Throws std::system_error naming `b` if the machine refuses; then nothing has changed.
void swap_folders(const std::filesystem::path& a, const std::filesystem::path& b);

/// The same in three renames, for file systems that cannot do it in one: for a moment `b` is not
/// there.
void swap_folders_in_steps(const std::filesystem::path& a, const std::filesystem::path& b);

} // namespace glim
