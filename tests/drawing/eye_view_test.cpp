#include "drawing/eye_view.h"

#include "drawing/picture_words.h"
#include "judgement/new_look.h"
#include "specimens/pictured_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

/// An upper and a lower lens that answer together, 100 mm apart. A shade 100 mm ahead covers the
/// lower one only. The lenses are surfaces 0 and 2, the shade surface 1.
Study two_lamps()
{
    using namespace shapes;
    Study study = lamp_behind(plate({0, 600, 0}, 60, 40), {wall(100, 560, 640, -130, -70)});
    study.surfaces[SurfaceId{1}].name = "shade";
    Surface lower = study.surfaces[SurfaceId{0}];
    lower.name = "lower lens";
    lower.mesh = plate({0, 600, -100}, 60, 40);
    Lamp lamp = study.lamps[LampId{0}];
    lamp.name = "lower";
    lamp.emits = {study.surfaces.add(std::move(lower))};
    study.lamps.add(std::move(lamp));
    return study;
}

/// What the picture of both lamps from straight ahead says.
std::string said_of(const Study& study)
{
    const PreparedScene scene(study);
    const LampLook look =
        new_look(study, scene, {{LampId{0}}, {LampId{1}}}, ReferenceAxis::forward, "curb");
    return EyeView(study, scene, look).toward({}, {}).caption;
}

bool names_shade(const std::string& caption)
{
    return caption.find("2400 mm2 hidden by shade") != std::string::npos;
}

} // namespace

TEST_CASE("what hides one of two lamps is named unless it was approved with that one", "[drawing]")
{
    Study study = two_lamps();
    CHECK(names_shade(said_of(study)));

    study.lamps[LampId{0}].approved_with = {SurfaceId{1}};
    CHECK(names_shade(said_of(study)));

    study.lamps[LampId{0}].approved_with = {};
    study.lamps[LampId{1}].approved_with = {SurfaceId{1}};
    const std::string own = said_of(study);
    CHECK(own.find("shade") == std::string::npos);
    CHECK(own.find("2400 mm2 hidden by the lamp itself") != std::string::npos);
}

TEST_CASE("a surface that is clear for the first lamp and hides the second is named", "[drawing]")
{
    Study study = two_lamps();
    study.surfaces[SurfaceId{1}].clear_for = {LampId{0}};
    CHECK(names_shade(said_of(study)));
}

TEST_CASE("hidden is what the findings call hidden, also where only the area in view is exact",
          "[report]")
{
    const Session session(pictured_study());
    const Findings findings = findings_of(session);
    LampLook look = findings.looks.front();
    for (std::size_t at = 0; at < look.toward.size(); ++at) {
        look.exact[at] = ExactArea{0.9 * look.seen[at].visible, square_millimetres(0.01)};
        look.exact_hidden[at] = std::nullopt;
    }
    const EyeView view(session.study(), session.scene(), look);
    for (std::size_t at = 0; at < look.toward.size(); ++at) {
        const ViewedAreas areas = view.areas(look.toward[at]);
        CHECK(areas.visible == look.visible(at));
        CHECK(areas.hidden == look.hidden(at));
        CHECK(areas.own == Area());
    }
}

TEST_CASE("what rounds to nothing is not told to be hidden", "[drawing]")
{
    LampLook look;
    look.name = "indicator";
    const ViewedAreas areas{.bare = square_millimetres(3000),
                            .visible = square_millimetres(3000),
                            .hidden = square_millimetres(0.0004),
                            .own = square_millimetres(0.0004)};
    const std::string caption = eye_caption(look, {}, areas, {});
    CHECK(caption.find("hidden") == std::string::npos);
    CHECK(eye_alt(look, {}, areas, {}).find("nothing hidden by other parts") != std::string::npos);
}
