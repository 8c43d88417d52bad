#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace glim {

enum class PlyEncoding { text, little_endian, big_endian };

/// A number of PLY; every kind has two names.
struct PlyType {
    std::string_view word;
    std::string_view other_word;
    std::size_t size; ///< bytes
    bool is_whole;
    bool is_signed;
};

struct PlyProperty {
    std::string name;
    const PlyType* type = nullptr;
    const PlyType* count_type = nullptr; ///< of a list; none for a single number

    bool is_list() const { return count_type != nullptr; }
};

struct PlyElement {
    std::string name;
    std::size_t count = 0;
    std::vector<PlyProperty> properties;

    /// The place of a property; properties.size() if there is none of that name.
    std::size_t place_of(std::string_view property) const;
};

struct PlyHeader {
    PlyEncoding encoding = PlyEncoding::text;
    std::vector<PlyElement> elements; ///< in the order in which the data follow
    std::size_t size = 0;             ///< bytes, after which the data begin

    const PlyElement* element(std::string_view name) const;
};

/// Reads everything up to the line `end_header` and the end of that line. The lines end as the
/// first one does. Throws InputError with all complaints about it, `name` being the file's.
PlyHeader read_ply_header(std::string_view bytes, const std::string& name);

/// The name of a face's list of corners: writers use either of two.
bool is_corner_list(const PlyProperty& property);

} // namespace glim
