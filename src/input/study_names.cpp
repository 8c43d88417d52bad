#include "input/study_names.h"

#include "model/nearest_word.h"

#include <algorithm>

namespace glim {

namespace {

template <class Things>
std::vector<std::string> names_of(const Things& things)
{
    std::vector<std::string> names;
    names.reserve(things.size());
    for (const auto& thing : things)
        names.push_back(thing.name);
    return names;
}

/// Places of the names that are known, each once.
std::vector<std::size_t> places(TableReader& table, std::string_view key, const std::string& kind,
                                const std::vector<std::string>& known)
{
    std::vector<std::size_t> found;
    for (const Reference& reference : table.texts(key)) {
        const auto at = std::find(known.begin(), known.end(), reference.name);
        const auto place = static_cast<std::size_t>(at - known.begin());
        if (at == known.end())
            table.complaints().add(reference.place,
                                   "there is no " + kind + " `" + reference.name + "`",
                                   did_you_mean(reference.name, known));
        else if (std::find(found.begin(), found.end(), place) == found.end())
            found.push_back(place);
    }
    return found;
}

} // namespace

std::optional<LampId> read_lamp_named(TableReader& table, std::string_view key, const Study& study)
{
    const auto found = places(table, key, "lamp", names_of(study.lamps));
    if (found.size() > 1)
        table.complain(key, "`" + std::string(key) + "` of " + table.words() + " names several",
                       "name one lamp");
    if (found.empty())
        return std::nullopt;
    return LampId{static_cast<std::uint32_t>(found.front())};
}

std::vector<LampId> read_lamps_named(TableReader& table, std::string_view key, const Study& study)
{
    std::vector<LampId> lamps;
    for (const std::size_t place : places(table, key, "lamp", names_of(study.lamps)))
        lamps.push_back(LampId{static_cast<std::uint32_t>(place)});
    return lamps;
}

std::vector<SurfaceId> read_surfaces_named(TableReader& table, std::string_view key,
                                           const Study& study)
{
    std::vector<SurfaceId> surfaces;
    for (const std::size_t place : places(table, key, "surface", names_of(study.surfaces)))
        surfaces.push_back(SurfaceId{static_cast<std::uint32_t>(place)});
    return surfaces;
}

std::vector<std::size_t> read_checks_named(TableReader& table, std::string_view key,
                                           const Study& study)
{
    return places(table, key, "check", names_of(study.checks));
}

} // namespace glim
