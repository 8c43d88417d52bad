#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace glim {

/// FNV-1a of 64 bits (Fowler, Noll, Vo) as 16 hexadecimal digits: tells that bytes were changed,
/// not who changed them. Not for identities that somebody may want to forge.
std::string checksum_of(std::string_view bytes);

/// The same of a file's bytes. Throws std::system_error if it cannot be read.
std::string checksum_of_file(const std::filesystem::path& file);

} // namespace glim
