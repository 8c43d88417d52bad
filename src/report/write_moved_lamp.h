#pragma once

#include "machine/new_folder.h"
#include "remedy/moved_lamp.h"

#include <filesystem>

namespace glim {

/// An answer, and what it was asked of.
struct MovedLampContent {
    const MovedLampAnswer& answer;
    const MoveMap& map;
    const Study& study;
    const MoveLampTask& task;
};

/// Writes to `folder`, which will stand at `target`, and commits it: where a move was found, a
/// study laid over this one with every surface that moves as OBJ (`study.toml`), the map of what
/// passes as picture and table, the answer as JSON and text.
void write_moved_lamp(const MovedLampContent& content, const std::filesystem::path& target,
                      NewFolder& folder);

} // namespace glim
