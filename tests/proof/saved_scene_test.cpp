#include "shapes/saved_scene.h"

#include "geometry/weld.h"
#include "machine/temporary_folder.h"
#include "proof/read_scene.h"
#include "shapes/two_ways.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

void check_alike(const Compared& a, const Compared& b)
{
    CHECK(in_mm2(a.by_definition) == in_mm2(b.by_definition));
    CHECK(in_mm2(a.hidden_by_definition) == in_mm2(b.hidden_by_definition));
    CHECK(in_mm2(a.exact.visible) == in_mm2(b.exact.visible));
    CHECK(in_mm2(a.seen.low) == in_mm2(b.seen.low));
    CHECK(in_mm2(a.seen.high) == in_mm2(b.seen.high));
}

} // namespace

TEST_CASE("a saved scene is read back as a study that answers the same", "[proof]")
{
    const test::TemporaryFolder folder;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        CAPTURE(seed);
        RandomScene scene = random_scene(seed);
        for (SceneBody& body : scene.bodies)
            body.mesh = welded(body.mesh); // as the reader does: bounds are wider where facets part
        save_as_study(scene, folder / "saved", "seed", square_millimetres(1));
        const ReadScene read = read_scene(folder / "saved");
        CHECK(read.lamp.twin == scene.twin);
        CHECK(read.bearings == scene.bearings);

        const TwoWays before(study_of(scene), lamp_of(scene), read.directions);
        const TwoWays after(read.study, read.lamp, read.directions);
        for (const Direction& d : read.directions)
            check_alike(before.toward(d), after.toward(d));
    }
}
