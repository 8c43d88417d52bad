#include "input/mesh_parts.h"

namespace glim {

void MeshParts::set(std::string MeshPart::*field, std::string name)
{
    names_.*field = std::move(name);
    current_.reset();
}

std::uint32_t MeshParts::current()
{
    if (current_)
        return *current_;
    const auto next = static_cast<std::uint32_t>(parts_.size());
    const auto [found, is_new] =
        number_of_.try_emplace({names_.object, names_.group, names_.material}, next);
    if (is_new)
        parts_.push_back(names_);
    current_ = found->second;
    return found->second;
}

} // namespace glim
