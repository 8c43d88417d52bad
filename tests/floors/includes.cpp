#include "floors/includes.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <optional>
#include <regex>

namespace glim::test {

namespace fs = std::filesystem;

namespace {

bool is_cpp(const fs::path& file)
{
    static constexpr std::array<std::string_view, 8> endings = {".h",   ".hh",  ".hpp", ".inc",
                                                                ".ipp", ".cpp", ".cc",  ".cxx"};
    return std::ranges::find(endings, file.extension().string()) != endings.end();
}

std::optional<Include> include_on(const std::string& text, int line)
{
    static const std::regex any(R"(^\s*#\s*include\b\s*(.*)$)");
    static const std::regex bracketed(R"re(^(?:<([^>]+)>|"([^"]+)").*$)re");
    std::smatch match;
    if (!std::regex_match(text, match, any))
        return std::nullopt;
    const std::string rest = match[1];
    if (!std::regex_match(rest, match, bracketed))
        return Include{line, '\0', rest};
    return match[1].matched ? Include{line, '<', match[1]} : Include{line, '"', match[2]};
}

} // namespace

SourceFile read_source(const fs::path& root, const fs::path& file)
{
    SourceFile source{.path = file.lexically_relative(root).generic_string(), .includes = {}};
    std::ifstream stream(file);
    for (std::string text; std::getline(stream, text);)
        if (const std::optional<Include> include = include_on(text, ++source.lines))
            source.includes.push_back(*include);
    return source;
}

std::vector<SourceFile> read_sources(const fs::path& root)
{
    std::vector<SourceFile> sources;
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(root))
        if (entry.is_regular_file() && is_cpp(entry.path()))
            sources.push_back(read_source(root, entry.path()));
    std::ranges::sort(sources, {}, &SourceFile::path);
    return sources;
}

} // namespace glim::test
