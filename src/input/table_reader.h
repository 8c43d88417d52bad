#pragma once

#include "geometry/vector.h"
#include "input/toml_table.h"
#include "units/units.h"

#include <array>
#include <filesystem>
#include <functional>
#include <optional>
#include <set>
#include <span>

namespace glim {

/// A name that refers to something else in the file, and where it is written.
struct Reference {
    std::string name;
    Place place = {};
};

/// Reads the values of one table. Whatever is wrong becomes a complaint and gives nothing, so that
/// the reading goes on and one run tells everything. It remembers what it was asked for: other keys
/// are unknown.
///
///     TableReader lamp(table, "[[lamp]]", complaints);
///     lamp.demand("side", "write side = \"left\", \"right\" or \"median\"");
///     if (const SideWord* row = lamp.row_of("side", side_words, &SideWord::word)) ...
///     lamp.complain_of_unknown_keys();
class TableReader {
public:
    /// `words` is how complaints call the table. `table` and `complaints` must outlive the reader.
    TableReader(const TomlTable& table, std::string words, Complaints& complaints);

    const Place& place() const { return table_->place; }
    /// Of the key's value; of the table, if the key is missing.
    Place place_of(std::string_view key) const;
    /// The folder of the file in which the key's value is written; a base may lie elsewhere.
    std::filesystem::path folder_of(std::string_view key) const;
    const std::string& words() const { return words_; }
    Complaints& complaints() const { return *complaints_; }
    void call_it(std::string words) { words_ = std::move(words); }
    bool has(std::string_view key) const { return table_->find(key) != nullptr; }

    bool holds_text(std::string_view key) const;
    bool holds_list(std::string_view key) const;
    bool holds_empty_list(std::string_view key) const;

    /// Complains if the key is missing, with this remedy.
    bool demand(std::string_view key, const std::string& remedy);
    void complain(std::string_view key, std::string what, std::string remedy);

    std::optional<std::string> text(std::string_view key); ///< never an empty one
    std::optional<bool> truth(std::string_view key);
    std::optional<double> number(std::string_view key, std::string_view unit); ///< finite
    std::optional<Length> length(std::string_view key);
    std::optional<Angle> angle(std::string_view key);
    /// Three numbers: a point in mm or a direction of any length.
    std::optional<Vector> vector(std::string_view key);
    /// So many finite numbers.
    std::optional<std::vector<double>> numbers(std::string_view key, std::size_t count,
                                               const std::string& remedy);
    /// One text or a list of texts.
    std::vector<Reference> texts(std::string_view key);
    /// The place in `known` of the word that is written.
    std::optional<std::size_t> choice(std::string_view key, const std::vector<std::string>& known);
    /// The same for one word or a list of words.
    std::vector<std::size_t> choices(std::string_view key, const std::vector<std::string>& known);
    /// The row of a table of words, as model/ has them.
    template <class Row, std::size_t n>
    const Row* row_of(std::string_view key, const std::array<Row, n>& rows,
                      std::string_view Row::*word);

    std::optional<TableReader> table(std::string_view key, std::string words);
    std::vector<TableReader> tables(std::string_view key, const std::string& words);
    /// A list whose elements the caller reads himself; nothing if missing.
    std::span<const TomlValue> list(std::string_view key);

    const std::set<std::string, std::less<>>& asked() const { return asked_; }
    /// Keys that nobody asked for; `remedy_for` a key, else the nearest of those asked for.
    void complain_of_unknown_keys();
    void complain_of_unknown_keys(const std::function<std::string(const std::string&)>& remedy_for);

private:
    const TomlValue* ask(std::string_view key);
    template <class Kind>
    const Kind* ask_for(std::string_view key, std::string_view remedy);

    const TomlTable* table_;
    std::string words_;
    Complaints* complaints_;
    std::set<std::string, std::less<>> asked_;
};

/// "text", "a number", "a list" ... for complaints.
std::string_view kind_of(const TomlValue& value);

/// The numbers of a list; nothing if it is not a list of exactly `count` finite numbers.
std::optional<std::vector<double>> numbers_in(const TomlValue& value, std::size_t count);

/// `"a", "b" or "c"`, as they are written in TOML.
std::string quoted_choice(const std::vector<std::string>& words);

template <class Row, std::size_t n>
const Row* TableReader::row_of(std::string_view key, const std::array<Row, n>& rows,
                               std::string_view Row::*word)
{
    std::vector<std::string> known;
    known.reserve(n);
    for (const Row& row : rows)
        known.emplace_back(row.*word);
    const std::optional<std::size_t> found = choice(key, known);
    return found ? &rows[*found] : nullptr;
}

} // namespace glim
