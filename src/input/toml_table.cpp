#include "input/toml_table.h"

#include <toml++/toml.h>

#include <algorithm>
#include <array>

namespace glim {

namespace {

Place place_of(const toml::source_region& source, const std::string& name)
{
    return {name, static_cast<int>(source.begin.line), static_cast<int>(source.begin.column), {}};
}

TomlTable converted(const toml::table& table, const std::string& name);

TomlValue converted(const toml::node& node, const std::string& name)
{
    TomlValue value{place_of(node.source(), name), TomlDate{}};
    if (const auto* table = node.as_table())
        value.is = converted(*table, name);
    else if (const auto* text = node.as_string())
        value.is = text->get();
    else if (const auto* boolean = node.as_boolean())
        value.is = boolean->get();
    else if (const auto number = node.value<double>())
        value.is = *number;
    else if (const auto* array = node.as_array()) {
        std::vector<TomlValue> values;
        for (const toml::node& element : *array)
            values.push_back(converted(element, name));
        value.is = std::move(values);
    }
    return value;
}

TomlTable converted(const toml::table& table, const std::string& name)
{
    TomlTable result{place_of(table.source(), name), {}};
    for (const auto& [key, node] : table)
        result.entries.push_back(
            {std::string(key.str()), place_of(key.source(), name), converted(node, name)});
    std::stable_sort(result.entries.begin(), result.entries.end(),
                     [](const TomlEntry& a, const TomlEntry& b) {
                         return std::pair(a.place.line, a.place.column) <
                                std::pair(b.place.line, b.place.column);
                     });
    return result;
}

/// What the parser's sentences mostly stem from, and the way out.
struct Hint {
    std::string_view sign; ///< a part of the parser's sentence
    std::string_view remedy;
};
constexpr std::array hints = {
    Hint{"parsing boolean", "write text in quotes, truth values as true or false"},
    Hint{"could not determine value type", "write text in quotes, numbers as 12 or 0.5"},
    Hint{"escape sequence", "write paths with forward slashes, or in 'single quotes'"},
    Hint{"unicode scalar", "write paths with forward slashes, or in 'single quotes'"},
    Hint{"expected a comment or whitespace",
         "one value a line; numbers with a point, without a unit: 0.5"},
    Hint{"as table", "write its head with double brackets here too: [[...]]"},
    Hint{"cannot redefine existing table",
         "keep one of the two; several of a kind have double brackets: [[...]]"},
    Hint{"cannot redefine", "keep one of the two"},
    Hint{"control characters", "end the text with a quote on the same line"},
    Hint{"decimal digit", "write digits on both sides of the point: 1.0, 0.5"},
    Hint{"leading zeroes", "take the leading zeroes away"},
    Hint{"parsing array", "separate the values by commas and end the list with ]"},
    Hint{"inline table", "keep { ... } on one line, its entries separated by single commas"},
    Hint{"parsing table header", "end the head of the table with ], of a repeated one with ]]"},
    Hint{"expected '='", "write key = value"},
    Hint{"end-of-file", "write a value after the ="},
    Hint{"utf-8", "save the file as UTF-8 text"},
};

/// The parser's sentence without its "Error while parsing ...: ".
std::string what_is_wrong(std::string_view sentence)
{
    constexpr std::string_view opening = "Error while parsing ";
    if (sentence.starts_with(opening))
        sentence.remove_prefix(sentence.find(": ") + 2);
    return "this is not TOML: " + std::string(sentence);
}

std::string remedy_for(std::string_view sentence)
{
    for (const Hint& hint : hints)
        if (sentence.find(hint.sign) != std::string_view::npos)
            return std::string(hint.remedy);
    return "mend this line; the file is TOML 1.0";
}

} // namespace

const TomlEntry* TomlTable::find(std::string_view key) const
{
    const auto found = std::find_if(entries.begin(), entries.end(),
                                    [&](const TomlEntry& e) { return e.key == key; });
    return found == entries.end() ? nullptr : &*found;
}

TomlTable parse_toml(std::string_view text, const std::string& name)
{
    try {
        return converted(toml::parse(text), name);
    } catch (const toml::parse_error& error) {
        const std::string sentence(error.description());
        throw InputError(
            {{place_of(error.source(), name), what_is_wrong(sentence), remedy_for(sentence)}});
    }
}

} // namespace glim
