#pragma once

#include "remedy/keep_clear_set.h"
#include "remedy/level_frame.h"
#include "visibility/prepared_scene.h"

namespace glim {

/// A keep-clear space as places are asked of, and what counts as in its way.
struct ClearSpace {
    KeepClearSet set;
    LevelFrame frame; ///< of the set
    TriangleMesh lit; ///< the lamp's face, level frame
    Length skipped;   ///< nothing nearer to `lit` counts: rays skip it too
    std::vector<Standing> counted;
};

} // namespace glim
