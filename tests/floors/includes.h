#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace glim::test {

/// One `#include`, as it stands.
struct Include {
    int line;
    char bracket;       ///< `"`, `<`, or 0 if it is neither and cannot be followed
    std::string header; ///< what stands between the brackets
};

/// A file of C++ and what it includes.
struct SourceFile {
    std::string path; ///< from the folder that was read, with `/`
    std::vector<Include> includes;
    int lines = 0;
};

SourceFile read_source(const std::filesystem::path& root, const std::filesystem::path& file);

/// Every file of C++ below `root`, sorted by its path.
std::vector<SourceFile> read_sources(const std::filesystem::path& root);

} // namespace glim::test
