#include "input/table_reader.h"

#include "model/nearest_word.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

std::string ticked(std::string_view word) { return "`" + std::string(word) + "`"; }

} // namespace

std::string_view kind_of(const TomlValue& value)
{
    constexpr std::array<std::string_view, 6> kinds = {"a date", "true or false", "a number",
                                                       "a text", "a list",        "a table"};
    return kinds[value.is.index()];
}

std::optional<std::vector<double>> numbers_in(const TomlValue& value, std::size_t count)
{
    const auto* list = std::get_if<std::vector<TomlValue>>(&value.is);
    if (!list || list->size() != count)
        return std::nullopt;
    std::vector<double> numbers;
    for (const TomlValue& element : *list) {
        const double* number = std::get_if<double>(&element.is);
        if (!number || !std::isfinite(*number))
            return std::nullopt;
        numbers.push_back(*number);
    }
    return numbers;
}

std::string quoted_choice(const std::vector<std::string>& words)
{
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0)
            text += i + 1 < words.size() ? ", " : " or ";
        text += "\"" + words[i] + "\"";
    }
    return text;
}

TableReader::TableReader(const TomlTable& table, std::string words, Complaints& complaints)
    : table_(&table), words_(std::move(words)), complaints_(&complaints)
{
}

Place TableReader::place_of(std::string_view key) const
{
    const TomlEntry* entry = table_->find(key);
    return entry ? entry->value.place : table_->place;
}

std::filesystem::path TableReader::folder_of(std::string_view key) const
{
    return std::filesystem::path(place_of(key).file).parent_path();
}

bool TableReader::holds_text(std::string_view key) const
{
    const TomlEntry* entry = table_->find(key);
    return entry && std::holds_alternative<std::string>(entry->value.is);
}

bool TableReader::holds_list(std::string_view key) const
{
    const TomlEntry* entry = table_->find(key);
    return entry && std::holds_alternative<std::vector<TomlValue>>(entry->value.is);
}

bool TableReader::holds_empty_list(std::string_view key) const
{
    const TomlEntry* entry = table_->find(key);
    const auto* list = entry ? std::get_if<std::vector<TomlValue>>(&entry->value.is) : nullptr;
    return list && list->empty();
}

bool TableReader::demand(std::string_view key, const std::string& remedy)
{
    if (ask(key))
        return true;
    complaints_->add(table_->place, ticked(key) + " is missing in " + words_, remedy);
    return false;
}

void TableReader::complain(std::string_view key, std::string what, std::string remedy)
{
    complaints_->add(place_of(key), std::move(what), std::move(remedy));
}

const TomlValue* TableReader::ask(std::string_view key)
{
    asked_.emplace(key);
    const TomlEntry* entry = table_->find(key);
    return entry ? &entry->value : nullptr;
}

template <class Kind>
const Kind* TableReader::ask_for(std::string_view key, std::string_view remedy)
{
    const TomlValue* value = ask(key);
    if (!value)
        return nullptr;
    const Kind* right = std::get_if<Kind>(&value->is);
    if (!right)
        complaints_->add(value->place,
                         ticked(key) + " of " + words_ + " is " + std::string(kind_of(*value)),
                         std::string(remedy));
    return right;
}

std::optional<std::string> TableReader::text(std::string_view key)
{
    const auto* text = ask_for<std::string>(key, "write a text in quotes");
    if (!text)
        return std::nullopt;
    if (text->empty()) {
        complain(key, ticked(key) + " of " + words_ + " is empty",
                 "write something between the quotes");
        return std::nullopt;
    }
    return *text;
}

std::optional<bool> TableReader::truth(std::string_view key)
{
    const bool* truth = ask_for<bool>(key, "write true or false, without quotes");
    return truth ? std::optional(*truth) : std::nullopt;
}

std::optional<double> TableReader::number(std::string_view key, std::string_view unit)
{
    const std::string remedy =
        "write a number" + (unit.empty() ? "" : " in " + std::string(unit)) + ", without quotes";
    const double* number = ask_for<double>(key, remedy);
    if (!number)
        return std::nullopt;
    if (!std::isfinite(*number)) {
        complain(key, ticked(key) + " of " + words_ + " is not a finite number", remedy);
        return std::nullopt;
    }
    return *number;
}

std::optional<Length> TableReader::length(std::string_view key)
{
    const std::optional<double> count = number(key, "mm");
    return count ? std::optional(millimetres(*count)) : std::nullopt;
}

std::optional<Angle> TableReader::angle(std::string_view key)
{
    const std::optional<double> count = number(key, "degrees");
    return count ? std::optional(degrees(*count)) : std::nullopt;
}

std::optional<std::vector<double>> TableReader::numbers(std::string_view key, std::size_t count,
                                                        const std::string& remedy)
{
    const TomlValue* value = ask(key);
    if (!value)
        return std::nullopt;
    std::optional<std::vector<double>> found = numbers_in(*value, count);
    if (!found)
        complain(key,
                 ticked(key) + " of " + words_ + " is not a list of " + std::to_string(count) +
                     " finite numbers",
                 remedy);
    return found;
}

std::optional<Vector> TableReader::vector(std::string_view key)
{
    const auto three =
        numbers(key, 3, "write " + std::string(key) + " = [x, y, z] in the axes of the vehicle");
    if (!three)
        return std::nullopt;
    return Vector((*three)[0], (*three)[1], (*three)[2]);
}

std::vector<Reference> TableReader::texts(std::string_view key)
{
    const TomlValue* value = ask(key);
    if (!value)
        return {};
    std::vector<TomlValue> elements;
    if (const auto* list = std::get_if<std::vector<TomlValue>>(&value->is))
        elements = *list;
    else
        elements = {*value};
    std::vector<Reference> texts;
    for (const TomlValue& element : elements) {
        const auto* text = std::get_if<std::string>(&element.is);
        if (text && !text->empty())
            texts.push_back({*text, element.place});
        else
            complaints_->add(element.place,
                             ticked(key) + " of " + words_ + " holds " +
                                 (text ? "an empty text" : std::string(kind_of(element))),
                             "write names in quotes: " + std::string(key) +
                                 " = [\"one\", \"other\"]");
    }
    return texts;
}

std::optional<std::size_t> TableReader::choice(std::string_view key,
                                               const std::vector<std::string>& known)
{
    const auto* text = ask_for<std::string>(key, "write " + quoted_choice(known));
    if (!text)
        return std::nullopt;
    const auto found = std::find(known.begin(), known.end(), *text);
    if (found != known.end())
        return found - known.begin();
    const std::optional<std::string> nearest = nearest_word(*text, known);
    complain(key, ticked(key) + " of " + words_ + " is \"" + *text + "\"",
             nearest ? "did you mean \"" + *nearest + "\"?" : "write " + quoted_choice(known));
    return std::nullopt;
}

std::vector<std::size_t> TableReader::choices(std::string_view key,
                                              const std::vector<std::string>& known)
{
    std::vector<std::size_t> found;
    for (const Reference& word : texts(key)) {
        const auto at = std::find(known.begin(), known.end(), word.name);
        if (at != known.end())
            found.push_back(at - known.begin());
        else
            complaints_->add(word.place,
                             ticked(key) + " of " + words_ + " holds \"" + word.name + "\"",
                             did_you_mean(word.name, known));
    }
    return found;
}

std::optional<TableReader> TableReader::table(std::string_view key, std::string words)
{
    const TomlValue* value = ask(key);
    const auto* table = value ? std::get_if<TomlTable>(&value->is) : nullptr;
    if (table)
        return TableReader(*table, std::move(words), *complaints_);
    if (value)
        complain(key, ticked(key) + " of " + words_ + " is " + std::string(kind_of(*value)),
                 "write it as one table, its head in single brackets or " + std::string(key) +
                     " = { ... }");
    return std::nullopt;
}

std::vector<TableReader> TableReader::tables(std::string_view key, const std::string& words)
{
    const TomlValue* value = ask(key);
    const std::string remedy = "write each of them as a table of its own, headed by [[" +
                               std::string(key) + "]], or as { ... } in a list";
    std::vector<TableReader> readers;
    const auto add = [&](const TomlValue& element) {
        if (const auto* table = std::get_if<TomlTable>(&element.is))
            readers.emplace_back(*table, words, *complaints_);
        else
            complaints_->add(
                element.place,
                ticked(key) + " of " + words_ + " holds " + std::string(kind_of(element)), remedy);
    };
    if (!value)
        return readers;
    if (const auto* list = std::get_if<std::vector<TomlValue>>(&value->is)) {
        for (const TomlValue& element : *list)
            add(element);
        return readers;
    }
    // A single table is read all the same, lest everything that refers to it be complained of too.
    complain(key, ticked(key) + " of " + words_ + " is " + std::string(kind_of(*value)), remedy);
    if (std::holds_alternative<TomlTable>(value->is))
        add(*value);
    return readers;
}

std::span<const TomlValue> TableReader::list(std::string_view key)
{
    const auto* list = ask_for<std::vector<TomlValue>>(key, "write a list in brackets: [ ... ]");
    return list ? std::span<const TomlValue>(*list) : std::span<const TomlValue>();
}

void TableReader::complain_of_unknown_keys()
{
    const std::vector<std::string> known(asked_.begin(), asked_.end());
    complain_of_unknown_keys([&](const std::string& key) { return did_you_mean(key, known); });
}

void TableReader::complain_of_unknown_keys(
    const std::function<std::string(const std::string&)>& remedy_for)
{
    for (const TomlEntry& entry : table_->entries)
        if (!asked_.contains(entry.key))
            complaints_->add(entry.place, "unknown key " + ticked(entry.key) + " in " + words_,
                             remedy_for(entry.key));
}

} // namespace glim
