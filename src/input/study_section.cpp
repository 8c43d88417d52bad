#include "input/study_section.h"

#include "model/nearest_word.h"
#include "model/study_keys.h"

#include <algorithm>
#include <cassert>

namespace glim {

namespace {

/// Whether reader and manual agree on what a section holds.
[[maybe_unused]] bool asked_as_described(const TableReader& table,
                                         const std::vector<std::string>& known)
{
    return table.asked().size() == known.size() &&
           std::all_of(known.begin(), known.end(),
                       [&](const std::string& key) { return table.asked().contains(key); });
}

std::string remedy_for(const std::string& key, const std::vector<std::string>& known)
{
    if (nearest_word(key, known))
        return did_you_mean(key, known);
    const std::vector<std::string> elsewhere = study_sections_with(key);
    if (elsewhere.empty())
        return did_you_mean(key, known);
    // What stands at the top are tables; a plain key of that name is meant for one of the others.
    const auto below_top = std::find_if(elsewhere.begin(), elsewhere.end(), [](const auto& words) {
        return words != study_section_words("");
    });
    return "it belongs to " + (below_top == elsewhere.end() ? elsewhere.front() : *below_top);
}

} // namespace

void finish_section(TableReader& table, std::string_view section)
{
    const std::vector<std::string> known = study_keys_of(section);
    // Where there is a base, the entry and the one that it removes are gone by now.
    if (std::find(known.begin(), known.end(), "remove") != known.end() &&
        table.truth("remove").value_or(false))
        table.complain("remove", table.words() + " removes nothing: this study has no base",
                       "take the table away, or name the `base` that has it");
    assert(asked_as_described(table, known));
    table.complain_of_unknown_keys([&](const std::string& key) { return remedy_for(key, known); });
}

} // namespace glim
