#pragma once

#include "machine/new_folder.h"
#include "remedy/added_lamp.h"

#include <filesystem>

namespace glim {

/// An answer, and what it was asked of.
struct AddedLampContent {
    const AddedLampAnswer& answer;
    const Session& session;
    const AddLampTask& task;
};

/// Writes to `folder`, which will stand at `target`, and commits it: a study laid over this one for
/// each place (`study.toml` for the best, `place-2.toml` ...) with its lens as OBJ, the table of
/// places, the answer as JSON and text, the body painted with where a lamp could go (PLY), and a
/// picture of it. Throws Stopped.
void write_added_lamp(const AddedLampContent& content, const std::filesystem::path& target,
                      NewFolder& folder, const Workers& workers);

} // namespace glim
