#include "floors/house_rules.h"

#include "floors/includes.h"

#include <cstdio>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <sstream>

namespace glim::test {

namespace fs = std::filesystem;

namespace {

const std::set<std::string> top_entries = {
    "CMakeLists.txt", "README.md", "DEVELOPERS.md",       "src",
    "tests",          "meshes",    "requirements-tables", "docs"};

std::string quoted(const std::string& text)
{
    std::string result = "'";
    for (const char c : text)
        result += c == '\'' ? "'\\''" : std::string(1, c);
    return result + "'";
}

/// What git prints; nothing if it fails or is not there.
std::optional<std::string> git(const fs::path& checkout, const std::string& arguments)
{
    // The checkout may belong to somebody else, as in a container.
    const std::string command = "git -c safe.directory='*' -c core.quotePath=false -C " +
                                quoted(checkout.string()) + " " + arguments + " 2>/dev/null";
    FILE* const pipe = popen(command.c_str(), "r");
    if (pipe == nullptr)
        return std::nullopt;
    std::string text;
    char part[4096];
    for (std::size_t n = 0; (n = fread(part, 1, sizeof part, pipe)) > 0;)
        text.append(part, n);
    return pclose(pipe) == 0 ? std::optional(text) : std::nullopt;
}

} // namespace

std::optional<std::vector<std::string>> tracked_paths(const fs::path& checkout)
{
    // Inside somebody else's checkout, git would speak of that one.
    const std::optional<std::string> prefix = git(checkout, "rev-parse --show-prefix");
    const std::optional<std::string> listing = git(checkout, "ls-files");
    if (prefix != "\n" || !listing)
        return std::nullopt;
    std::vector<std::string> paths;
    std::istringstream lines(*listing);
    for (std::string line; std::getline(lines, line);)
        paths.push_back(line);
    return paths;
}

std::vector<std::string> wrong_top_entries(const std::vector<std::string>& tracked)
{
    std::set<std::string> found;
    for (const std::string& path : tracked)
        if (!path.starts_with('.'))
            found.insert(path.substr(0, path.find('/')));
    std::vector<std::string> findings;
    for (const std::string& entry : found)
        if (!top_entries.contains(entry))
            findings.push_back(entry + " should not stand at the top");
    for (const std::string& entry : top_entries)
        if (!found.contains(entry))
            findings.push_back(entry + " is missing at the top");
    return findings;
}

std::vector<std::string> long_files(const fs::path& folder)
{
    std::vector<std::string> findings;
    for (const SourceFile& source : read_sources(folder))
        if (source.lines > most_lines)
            findings.push_back(source.path + " has " + std::to_string(source.lines) + " lines");
    return findings;
}

std::vector<std::string> twice_defined(const fs::path& folder)
{
    // What stands in a namespace is not indented; what stands in a type is. A specialisation, whose
    // name is followed by <, and a declaration, which ends in a semicolon, define no name.
    static const std::regex definition(
        R"(^(?:struct|class|union|enum(?: class| struct)?) (\w+)(?: final)?(?: :[^;]*)?(?: \{.*)?$)");
    std::map<std::string, std::string> first_in;
    std::vector<std::string> findings;
    for (const SourceFile& source : read_sources(folder)) {
        std::ifstream stream(folder / source.path);
        std::smatch match;
        for (std::string line; source.path.ends_with(".h") && std::getline(stream, line);)
            if (std::regex_match(line, match, definition)) {
                const auto [first, added] = first_in.try_emplace(match[1], source.path);
                if (!added)
                    findings.push_back(source.path + ": " + first->first + " is in " +
                                       first->second + " too");
            }
    }
    return findings;
}

std::vector<std::string> bad_test_names(const fs::path& folder)
{
    static const std::regex test_case("TEST_CASE\\(\\s*\"((?:[^\"\\\\]|\\\\.)*)\"");
    std::vector<std::string> findings;
    for (const SourceFile& source : read_sources(folder)) {
        std::ostringstream text;
        text << std::ifstream(folder / source.path).rdbuf();
        const std::string all = text.str();
        for (std::sregex_iterator test(all.begin(), all.end(), test_case), end; test != end; ++test)
            if (const std::string name = (*test)[1];
                name.starts_with('-') || name.find(';') != std::string::npos)
                findings.push_back(source.path + ": " + name);
    }
    return findings;
}

} // namespace glim::test
