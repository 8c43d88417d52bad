#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace glim {

/// Which bytes a file held when it was read.
struct FileIdentity {
    std::uintmax_t bytes = 0;
    std::string sha256; ///< FIPS 180-4: 64 hexadecimal digits, small letters
    friend bool operator==(const FileIdentity&, const FileIdentity&) = default;
};

/// What a file is to the study that stands on it.
enum class FileUse { study, base, mesh, curve, photometry, luminance, table, shipped_table };

struct SourceFile {
    FileUse use = FileUse::study;
    std::string file; ///< from the study's folder; of a shipped table its own name
    FileIdentity is;
    friend bool operator==(const SourceFile&, const SourceFile&) = default;
};

struct FileUseWord {
    FileUse use;
    std::string_view key;   ///< in results
    std::string_view words; ///< for people
};
inline constexpr std::array file_use_words = {
    FileUseWord{FileUse::study, "study", "study"},
    FileUseWord{FileUse::base, "base", "study below it"},
    FileUseWord{FileUse::mesh, "mesh", "mesh"},
    FileUseWord{FileUse::curve, "curve", "curve that trims a lit surface"},
    FileUseWord{FileUse::photometry, "photometry", "photometric file"},
    FileUseWord{FileUse::luminance, "luminance", "luminance picture of a lit surface"},
    FileUseWord{FileUse::table, "table", "requirement table"},
    FileUseWord{FileUse::shipped_table, "shipped_table", "requirement table of the program"},
};

} // namespace glim
