#include "input/study_overlay.h"

#include "input/file_digest.h"
#include "input/text_file.h"
#include "model/nearest_word.h"

#include <algorithm>
#include <array>
#include <map>
#include <system_error>

namespace glim {

namespace {

/// Two keys that say the same in different ways: whoever writes one takes the other back.
struct Rivals {
    std::string_view list;
    std::string_view one, other;
};
constexpr std::array rivals = {Rivals{"check", "lamp", "lamps"}};

std::string_view text_of(const TomlTable& table, std::string_view key)
{
    const TomlEntry* const entry = table.find(key);
    const auto* text = entry ? std::get_if<std::string>(&entry->value.is) : nullptr;
    return text ? std::string_view(*text) : std::string_view();
}

bool is_true(const TomlTable& table, std::string_view key)
{
    const TomlEntry* const entry = table.find(key);
    const bool* truth = entry ? std::get_if<bool>(&entry->value.is) : nullptr;
    return truth && *truth;
}

void take_away(TomlTable& table, std::string_view key)
{
    std::erase_if(table.entries, [&](const TomlEntry& entry) { return entry.key == key; });
}

void put(TomlTable& table, const TomlEntry& entry)
{
    const auto found = std::find_if(table.entries.begin(), table.entries.end(),
                                    [&](const TomlEntry& e) { return e.key == entry.key; });
    if (found == table.entries.end())
        table.entries.push_back(entry);
    else
        *found = entry;
}

bool is_list_of_tables(const TomlValue& value)
{
    const auto* list = std::get_if<std::vector<TomlValue>>(&value.is);
    return list && !list->empty() &&
           std::all_of(list->begin(), list->end(), [](const TomlValue& element) {
               return std::holds_alternative<TomlTable>(element.is);
           });
}

/// Lays the entries of one list of tables over those below it.
class ListOverlay {
public:
    ListOverlay(std::string list, std::vector<TomlValue> below, Complaints& complaints)
        : list_(std::move(list)), entries_(std::move(below)), complaints_(complaints)
    {
    }

    void lay(const TomlValue& above);
    std::vector<TomlValue> take() { return std::move(entries_); }

private:
    void change(TomlTable& below, const TomlTable& above) const;
    void complain_of_removal(const TomlTable& above);
    bool is_laid_twice(const TomlTable& above);

    std::string list_;
    std::vector<TomlValue> entries_;
    std::map<std::string, int, std::less<>> lines_; ///< of the names laid, in the upper study
    Complaints& complaints_;
};

void ListOverlay::lay(const TomlValue& above)
{
    const TomlTable& table = std::get<TomlTable>(above.is);
    if (is_laid_twice(table))
        return;
    const std::string_view name = text_of(table, "name");
    const auto below = std::find_if(entries_.begin(), entries_.end(), [&](const TomlValue& value) {
        const auto* other = std::get_if<TomlTable>(&value.is);
        return other && !name.empty() && text_of(*other, "name") == name;
    });
    if (!is_true(table, "remove")) {
        if (below == entries_.end())
            entries_.push_back(above);
        else
            change(std::get<TomlTable>(below->is), table);
    } else if (below == entries_.end()) {
        complain_of_removal(table);
    } else {
        entries_.erase(below);
    }
}

/// The second of one name would change the first without a word.
bool ListOverlay::is_laid_twice(const TomlTable& above)
{
    const std::string name(text_of(above, "name"));
    if (name.empty())
        return false;
    const Place& place = above.find("name")->value.place;
    const auto [first, is_new] = lines_.emplace(name, place.line);
    if (!is_new)
        complaints_.add(place,
                        "the " + list_ + " `" + name + "` is there already, on line " +
                            std::to_string(first->second),
                        "give one of the two another name");
    return !is_new;
}

void ListOverlay::change(TomlTable& below, const TomlTable& above) const
{
    for (const TomlEntry& entry : above.entries) {
        for (const Rivals& pair : rivals)
            if (pair.list == list_ && (entry.key == pair.one || entry.key == pair.other))
                take_away(below, entry.key == pair.one ? pair.other : pair.one);
        put(below, entry);
    }
}

void ListOverlay::complain_of_removal(const TomlTable& above)
{
    std::vector<std::string> known;
    for (const TomlValue& value : entries_)
        if (const auto* table = std::get_if<TomlTable>(&value.is))
            known.emplace_back(text_of(*table, "name"));
    const std::string name(text_of(above, "name"));
    if (name.empty())
        return complaints_.add(above.find("remove")->value.place,
                               "this [[" + list_ + "]] does not say what it removes",
                               "write the name that it has in the base");
    complaints_.add(above.find("remove")->value.place,
                    "there is no [[" + list_ + "]] `" + name + "` in the base to be removed",
                    did_you_mean(name, known));
}

void lay(TomlTable& lower, const TomlEntry& above, Complaints& complaints)
{
    TomlValue laid = above.value;
    const TomlEntry* const entry = lower.find(above.key);
    const auto* below = entry ? &entry->value : nullptr;
    if (is_list_of_tables(above.value)) {
        const auto* list = below ? std::get_if<std::vector<TomlValue>>(&below->is) : nullptr;
        ListOverlay overlay(above.key, list ? *list : std::vector<TomlValue>(), complaints);
        for (const TomlValue& element : std::get<std::vector<TomlValue>>(above.value.is))
            overlay.lay(element);
        laid.is = overlay.take();
    } else if (below && std::holds_alternative<TomlTable>(below->is) &&
               std::holds_alternative<TomlTable>(above.value.is)) {
        laid = *below;
        for (const TomlEntry& key : std::get<TomlTable>(above.value.is).entries)
            put(std::get<TomlTable>(laid.is), key);
    }
    put(lower, {above.key, above.place, std::move(laid)});
}

TomlTable laid_over(TomlTable lower, const TomlTable& upper)
{
    Complaints complaints;
    lower.place = upper.place;
    for (const TomlEntry& entry : upper.entries)
        if (entry.key != "base")
            lay(lower, entry, complaints);
    complaints.throw_if_any();
    return lower;
}

std::filesystem::path true_path(const std::filesystem::path& file)
{
    std::error_code trouble;
    const std::filesystem::path path = std::filesystem::weakly_canonical(file, trouble);
    return trouble ? file : path;
}

/// `above` are the studies that stand on this one, and `asked_at` is where the last of them says
/// so.
StudyText read_on(const std::filesystem::path& file, const Place& asked_at,
                  std::vector<std::filesystem::path> above)
{
    const std::string text = read_text_file(file, asked_at);
    const SourceFile source{above.empty() ? FileUse::study : FileUse::base, file.string(),
                            identity_of(text)};
    TomlTable study = parse_toml(text, file.string());
    const TomlEntry* const base = study.find("base");
    const std::string name(text_of(study, "base"));
    if (!base || name.empty())
        return {std::move(study), {source}};
    above.push_back(true_path(file));
    const std::filesystem::path below = file.parent_path() / name;
    if (std::find(above.begin(), above.end(), true_path(below)) != above.end())
        refuse(base->value.place, "the base `" + name + "` leads back to a study that stands on it",
               "take `base` away from one of the studies of this circle");
    StudyText lower = read_on(below, base->value.place, above);
    lower.files.insert(lower.files.begin(), source);
    return {laid_over(std::move(lower.table), study), std::move(lower.files)};
}

} // namespace

StudyText read_study_text(const std::filesystem::path& file) { return read_on(file, {}, {}); }

} // namespace glim
