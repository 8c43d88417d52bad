#pragma once

#include <optional>
#include <string_view>

namespace glim {

/// What a file is that cannot be a mesh we read, and what to do about it.
struct ForeignFile {
    std::string_view begins_with;
    std::string_view what; ///< "a page of the web"
    std::string_view remedy;
};

/// Told by the first bytes; blanks before a text's first word and upper or lower case are no
/// matter.
std::optional<ForeignFile> foreign_file(std::string_view bytes);

} // namespace glim
