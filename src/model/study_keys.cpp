#include "model/study_keys.h"

#include "model/study_key_lists.h"

#include <algorithm>
#include <array>

namespace glim {

namespace {

std::vector<StudyKey> all_keys()
{
    std::vector<StudyKey> all;
    for (const std::span<const StudyKey> list : {keys_of_what_is_drawn(), keys_of_what_is_asked(),
                                                 keys_of_remedies(), keys_of_what_varies()})
        all.insert(all.end(), list.begin(), list.end());
    return all;
}

/// Stands for [ground.curb] and [ground.design] too: the three hold the same keys.
constexpr std::string_view any_ground = "ground.unladen";

constexpr std::array repeated_sections = {"mesh",      "surface", "lamp",       "check", "module",
                                          "tolerance", "state",   "moved_part", "option"};

} // namespace

std::span<const StudyKey> study_keys()
{
    static const std::vector<StudyKey> keys = all_keys();
    return keys;
}

std::vector<std::string> study_keys_of(std::string_view section)
{
    std::vector<std::string> found;
    for (const StudyKey& k : study_keys())
        if (k.section == section)
            found.emplace_back(k.key);
    return found;
}

std::vector<std::string> study_sections_with(std::string_view key)
{
    std::vector<std::string> found;
    for (const StudyKey& k : study_keys())
        if (k.key == key)
            found.push_back(study_section_words(k.section));
    return found;
}

std::string study_section_words(std::string_view section)
{
    if (section.empty())
        return "the top of the study";
    if (section == any_ground)
        return "[" + std::string(section) + "]";
    if (const std::size_t dot = section.rfind('.'); dot != std::string_view::npos)
        return "`" + std::string(section.substr(dot + 1)) + "` of " +
               study_section_words(section.substr(0, dot));
    const bool repeated = std::find(repeated_sections.begin(), repeated_sections.end(), section) !=
                          repeated_sections.end();
    const std::string name(section);
    return repeated ? "[[" + name + "]]" : "[" + name + "]";
}

} // namespace glim
