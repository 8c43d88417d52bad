#pragma once

#include "input/table_reader.h"

#include <cstdint>
#include <optional>

namespace glim {

/// The names of one kind of thing in a file, in order; each may be used once.
class NameBook {
public:
    /// `kind` is the head of its tables: "surface" for [[surface]].
    explicit NameBook(std::string kind) : kind_(std::move(kind)) {}

    /// Reads the key `name` and has complaints call the table by it from now on. A missing name or
    /// one used before is a complaint; the thing takes its place in the order all the same.
    std::string read_name(TableReader& table);

    /// The place of a name in the order. An unknown one is a complaint.
    std::optional<std::uint32_t> find(const Reference& reference, Complaints& complaints) const;
    /// Of several, those that are known.
    std::vector<std::uint32_t> find(const std::vector<Reference>& references,
                                    Complaints& complaints) const;

private:
    std::string kind_;
    std::vector<Reference> names_;
};

} // namespace glim
