#pragma once

#include <string>
#include <vector>

namespace glim::demo {

struct DemoFile {
    std::string name;
    std::string text;
};

/// All mesh and photometric files of the demo corner, always the same bytes.
///
/// `body`, `nose`, `wing` and `lamp` make the corner as first drawn. `nose-relieved` takes the
/// place of `nose`: a shallow relief in the flank that faces the lamp. `wing-shouldered` takes the
/// place of `wing`: a shoulder beside the lamp that grows out of bumper and wheel arch.
/// `added-lamp` stands on the nose, `side-lamp` on the shouldered wing. `load-tray` is folded up
/// ahead of it all. `indicator.ies` is the light of the indicator in `lamp`.
std::vector<DemoFile> demo_files();

} // namespace glim::demo
