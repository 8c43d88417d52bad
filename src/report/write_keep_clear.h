#pragma once

#include "machine/new_folder.h"
#include "report/headroom_page.h"

namespace glim {

/// Writes the folder of `keep-clear`: each space as STL and OBJ, each surface that reaches in as
/// PLY painted by depth and as a map, all surfaces as one PLY painted by headroom and as a picture,
/// a page, and the same as JSON, CSV and text. `command` is what gives it again.
void write_keep_clear(const KeepClear& found, const HeadroomShown& headroom, const Study& study,
                      const std::string& command, NewFolder& folder);

} // namespace glim
