#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace glim {

/// What the first word of a line of an OBJ file asks for.
enum class ObjStatement {
    point,
    face,
    object,
    group,
    material,
    curved_surface, ///< not read, but counted: something will be missing
    other_file,     ///< would bring in another file, which is never opened
    passed_over,    ///< says nothing about faces
    unknown,
};

/// Upper and lower case differ, as the format has it.
ObjStatement obj_statement(std::string_view word);

/// Every word that is known, for "did you mean".
std::vector<std::string> obj_words();

} // namespace glim
