#pragma once

#include "model/complaint.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace glim {

struct TomlEntry;
struct TomlValue;

/// A table of a TOML text, in the order of the text.
struct TomlTable {
    Place place;
    std::vector<TomlEntry> entries;

    const TomlEntry* find(std::string_view key) const;
};

/// A date or a time: our files have no use for them.
struct TomlDate {};

/// A value and where it stands. Whole numbers are numbers.
struct TomlValue {
    Place place;
    std::variant<TomlDate, bool, double, std::string, std::vector<TomlValue>, TomlTable> is;
};

struct TomlEntry {
    std::string key;
    Place place;
    TomlValue value;
};

/// `name` is what complaints call the file. Throws InputError with the first slip against TOML's
/// own grammar: after it the text cannot be trusted.
TomlTable parse_toml(std::string_view text, const std::string& name);

} // namespace glim
