#include "input/name_book.h"

#include "model/nearest_word.h"

#include <algorithm>

namespace glim {

std::string NameBook::read_name(TableReader& table)
{
    table.demand("name", "give each [[" + kind_ + "]] a name of its own");
    std::string name = table.text("name").value_or("");
    const auto same = [&](const Reference& other) { return other.name == name; };
    const auto first = std::find_if(names_.begin(), names_.end(), same);
    if (!name.empty() && first != names_.end())
        table.complain("name",
                       "the " + kind_ + " `" + name + "` is there already, on line " +
                           std::to_string(first->place.line),
                       "give one of the two another name");
    names_.push_back({name, table.place_of("name")});
    if (!name.empty())
        table.call_it("[[" + kind_ + "]] `" + name + "`");
    return name;
}

std::optional<std::uint32_t> NameBook::find(const Reference& reference,
                                            Complaints& complaints) const
{
    std::vector<std::string> known;
    for (std::uint32_t i = 0; i < names_.size(); ++i) {
        if (names_[i].name == reference.name)
            return i;
        if (!names_[i].name.empty())
            known.push_back(names_[i].name);
    }
    complaints.add(reference.place, "there is no " + kind_ + " `" + reference.name + "`",
                   did_you_mean(reference.name, known));
    return std::nullopt;
}

std::vector<std::uint32_t> NameBook::find(const std::vector<Reference>& references,
                                          Complaints& complaints) const
{
    std::vector<std::uint32_t> found;
    for (const Reference& reference : references) {
        const std::optional<std::uint32_t> place = find(reference, complaints);
        if (place && std::find(found.begin(), found.end(), *place) == found.end())
            found.push_back(*place);
    }
    return found;
}

} // namespace glim
