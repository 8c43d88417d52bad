#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace glim::test {

/// The floor a room is on, 0 at the bottom; nothing if there is no such room.
std::optional<int> floor_of(std::string_view room);

/// Where an outside library may be included.
struct Door {
    std::string_view library;
    std::vector<std::string_view> headers; ///< how its headers begin
    /// `room/` opens a whole room, headers included; `room/file` that one source file.
    std::vector<std::string_view> open_for;
};

/// The door that guards `header`, as written between the angle brackets; none for the headers of
/// C++ itself, which have neither dot nor slash in their names.
const Door* door_of(std::string_view header);

/// Whether a header is one of C++ itself.
bool is_standard(std::string_view header);

} // namespace glim::test
