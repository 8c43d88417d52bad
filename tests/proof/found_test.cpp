// Scenes on which the program was wrong once, or would be with a part of its certificate missing:
// shrunk by the proof, kept in tests/visibility/found, replayed for ever.

#include "proof/read_scene.h"
#include "shapes/two_ways.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using namespace glim::shapes;
namespace fs = std::filesystem;

TEST_CASE("every scene that was found once holds all claims", "[proof]")
{
    std::vector<fs::path> folders;
    for (const fs::directory_entry& entry :
         fs::directory_iterator(std::string(GLIM_SOURCE_DIR) + "/tests/visibility/found"))
        folders.push_back(entry.path());
    std::sort(folders.begin(), folders.end());
    CHECK(folders.size() >= 4);
    for (const fs::path& folder : folders) {
        CAPTURE(folder);
        const ReadScene scene = read_scene(folder);
        const TwoWays ways(scene.study, scene.lamp, scene.directions);
        for (const Direction& d : scene.directions)
            CHECK(ways.toward(d).broken == std::vector<std::string>{});
    }
}
