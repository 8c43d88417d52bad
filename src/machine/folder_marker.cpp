#include "machine/folder_marker.h"

#include <fstream>

namespace glim {

namespace {

constexpr std::string_view head =
    "# Files that cornerglim wrote here and may replace. Others it leaves alone.";
constexpr std::string_view by_head = "# Written by: ";

constexpr std::size_t checksum_digits = 16;
constexpr std::string_view behind_checksum = "  ";

bool begins_with_checksum(const std::string& line)
{
    return line.find_first_not_of("0123456789abcdef") == checksum_digits &&
           line.compare(checksum_digits, behind_checksum.size(), behind_checksum) == 0;
}

/// No name of a file of results begins with `#`.
void read_line(const std::string& line, FolderMarker& marker)
{
    if (line.starts_with(by_head))
        marker.by = line.substr(by_head.size());
    else if (begins_with_checksum(line))
        marker.files[line.substr(checksum_digits + behind_checksum.size())] =
            line.substr(0, checksum_digits);
    else
        marker.files[line] = "";
}

} // namespace

std::string FolderMarker::text() const
{
    std::string text = std::string(head) + "\n";
    if (!by.empty())
        text += std::string(by_head) + by + "\n";
    for (const auto& [name, checksum] : files)
        text.append(checksum).append(behind_checksum).append(name).append("\n");
    return text;
}

std::optional<FolderMarker> read_folder_marker(const std::filesystem::path& folder)
{
    std::ifstream file(folder / folder_marker_name, std::ios::binary);
    std::string line;
    if (!std::getline(file, line) || line != head)
        return std::nullopt;
    FolderMarker marker;
    while (std::getline(file, line))
        read_line(line, marker);
    return marker;
}

} // namespace glim
