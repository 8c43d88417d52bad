#include "shapes/saved_scene.h"

#include "input/read_study.h"
#include "machine/temporary_folder.h"
#include "shapes/two_ways.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

/// A saved scene's bearings, as the study's only row asks for them.
std::vector<Bearing> bearings_of(const Study& study)
{
    const RuleRow* const row = study.tables.front().row("asked");
    REQUIRE(row != nullptr);
    std::vector<Bearing> bearings;
    for (const FieldRectangle& point : row->field.rectangles)
        bearings.push_back({point.h_least, point.v_least});
    return bearings;
}

void check_alike(const Compared& a, const Compared& b)
{
    CHECK(in_mm2(a.by_definition) == in_mm2(b.by_definition));
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
        const RandomScene scene = random_scene(seed);
        save_as_study(scene, folder / "saved", "seed", square_millimetres(1));
        const Study study = read_study(folder / "saved" / "study.toml");
        const LampStanding lamp = lamp_of(scene);
        CHECK(study.lamps[LampId{0}].paired == scene.twin);
        CHECK(bearings_of(study) == scene.bearings);

        const TwoWays before(study_of(scene), lamp);
        const TwoWays after(study, lamp);
        for (const Bearing& b : scene.bearings)
            check_alike(before.toward(toward(lamp, b)), after.toward(toward(lamp, b)));
    }
}
