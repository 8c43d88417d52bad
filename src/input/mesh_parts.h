#pragma once

#include "model/mesh_file.h"

#include <array>
#include <map>
#include <optional>

namespace glim {

/// Numbers the parts of a mesh file in the order in which they get their first facet.
class MeshParts {
public:
    /// Names for the facets to come; setting them makes no part yet.
    void set(std::string MeshPart::*field, std::string name);
    /// The number of the part that has the names of the moment.
    std::uint32_t current();
    std::vector<MeshPart> take() { return std::move(parts_); }

private:
    MeshPart names_;
    std::optional<std::uint32_t> current_;
    std::vector<MeshPart> parts_;
    std::map<std::array<std::string, 3>, std::uint32_t> number_of_;
};

} // namespace glim
