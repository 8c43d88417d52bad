#pragma once

#include "remedy/headroom.h"
#include "report/json.h"

namespace glim {

/// All that was found but the meshes. `command` is what gives it again.
Json keep_clear_json(const KeepClear& found, const std::vector<Headroom>& headroom,
                     const Study& study, const std::string& command);

/// One name a space, for its files.
std::vector<std::string> space_files(const KeepClear& found);

/// A row a space, and a row an intrusion.
std::string spaces_csv(const KeepClear& found, const std::vector<std::string>& files);
std::string intrusions_csv(const KeepClear& found, const Study& study);

} // namespace glim
