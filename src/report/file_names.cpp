#include "report/file_names.h"

#include <algorithm>
#include <array>
#include <set>

namespace glim {

namespace {

/// Room for an ending and a number within what every file system carries.
constexpr std::size_t most_bytes = 80;

/// Names that stay devices on some systems whatever ending they get.
constexpr std::array<std::string_view, 4> devices = {"con", "prn", "aux", "nul"};
constexpr std::array<std::string_view, 2> numbered_devices = {"com", "lpt"};

bool is_plain(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' ||
           c == '_' || c == '-';
}

std::string in_small_letters(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return text;
}

bool is_device(const std::string& name)
{
    const std::string stem = in_small_letters(name.substr(0, name.find('.')));
    const bool numbered = stem.size() == 4 && stem[3] >= '0' && stem[3] <= '9';
    return std::find(devices.begin(), devices.end(), stem) != devices.end() ||
           (numbered && std::find(numbered_devices.begin(), numbered_devices.end(),
                                  stem.substr(0, 3)) != numbered_devices.end());
}

std::string trimmed(const std::string& name)
{
    const std::size_t from = name.find_first_not_of(".-");
    if (from == std::string::npos)
        return {};
    return name.substr(from, name.find_last_not_of(".-") + 1 - from);
}

} // namespace

std::string plain_name(std::string_view name)
{
    std::string plain;
    for (const char c : name)
        if (is_plain(c))
            plain += c;
        else if (!plain.ends_with('-'))
            plain += '-';
    plain = trimmed(trimmed(plain).substr(0, most_bytes));
    if (plain.empty() || is_device(plain))
        return plain.empty() ? "unnamed" : "_" + plain;
    return plain;
}

std::vector<std::string> plain_names(const std::vector<std::string>& names)
{
    std::vector<std::string> plain;
    std::set<std::string> taken;
    for (const std::string& name : names) {
        const std::string first = plain_name(name);
        std::string free = first;
        for (int i = 2; !taken.insert(in_small_letters(free)).second; ++i)
            free = first + "-" + std::to_string(i);
        plain.push_back(free);
    }
    return plain;
}

} // namespace glim
