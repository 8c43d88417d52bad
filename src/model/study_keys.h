#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace glim {

/// One key of the study file, described once: for the reader, for whoever writes a study, and for
/// `docs/study-file.md`, which a test holds to this table.
struct StudyKey {
    /// "" for the top, "vehicle", "surface.select" ...; "ground.unladen" for all three states.
    std::string_view section;
    std::string_view key;
    std::string_view unit;     ///< "mm", "deg"; empty for words and names
    std::string_view fallback; ///< what holds if it is missing; "required" if it must be there
    std::string_view sentence; ///< what it says, without a full stop
};

/// In the order in which a study is best written.
std::span<const StudyKey> study_keys();

/// The keys of one section, in that order.
std::vector<std::string> study_keys_of(std::string_view section);

/// The sections that know this key, as a study writes them: "[sampling]", "[[lamp]]".
std::vector<std::string> study_sections_with(std::string_view key);

/// How a study writes a section: "" -> "the top of the study", "vehicle" -> "[vehicle]",
/// "lamp" -> "[[lamp]]", "ground.unladen" -> "[ground.unladen]", "surface.select" -> "`select` of
/// [[surface]]".
std::string study_section_words(std::string_view section);

} // namespace glim
