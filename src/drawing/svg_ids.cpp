#include "drawing/svg_ids.h"

#include <array>
#include <map>
#include <string_view>

namespace glim {

namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// What the process counts; with what stands before it where it is defined and where it is used.
constexpr std::array<std::string_view, 4> counted = {"\"surface", "\"image", "#surface", "#image"};

/// The length of "#image" and the like at `at`, where a number follows; else 0.
std::size_t name_at(const std::string& svg, std::size_t at)
{
    for (const std::string_view name : counted)
        if (svg.compare(at, name.size(), name) == 0 && at + name.size() < svg.size() &&
            is_digit(svg[at + name.size()]))
            return name.size();
    return 0;
}

} // namespace

std::string with_ids_counted_from_one(const std::string& svg)
{
    std::map<std::string, std::string> numbers; // "image13" becomes "image1"
    std::string renamed;
    renamed.reserve(svg.size());
    for (std::size_t at = 0; at < svg.size();) {
        const std::size_t name = name_at(svg, at);
        renamed += svg[at++];
        if (name == 0)
            continue;
        std::size_t end = at + name - 1;
        const std::string kind = svg.substr(at, name - 1);
        while (end < svg.size() && is_digit(svg[end]))
            ++end;
        const auto [found, fresh] = numbers.try_emplace(svg.substr(at, end - at));
        if (fresh)
            found->second = kind + std::to_string(numbers.size());
        renamed += found->second;
        at = end;
    }
    return renamed;
}

} // namespace glim
