#include "drawing/pictures.h"

#include "drawing/eye_view.h"
#include "specimens/pictured_study.h"
#include "words/look_words.h"
#include "words/numbers.h"

#include <catch2/catch.hpp>

#include <set>

using namespace glim;
using namespace glim::test;

namespace {

std::set<std::pair<double, double>> directions_of(const Pictures& pictures)
{
    std::set<std::pair<double, double>> all;
    for (const EyePicture& p : pictures.eyes)
        all.emplace(in_degrees(p.toward.h), in_degrees(p.toward.v));
    return all;
}

} // namespace

TEST_CASE("a check is pictured from its worst direction, the axis, six corners of a notched field "
          "and across the vehicle, once for two checks that ask the same",
          "[report]")
{
    const Session session(pictured_study());
    const Findings findings = findings_of(session);
    const Pictures pictures = pictures_of(session, findings, {});
    const LampVerdict& verdict = findings.checks.front().deciding_verdict();
    const Bearing worst = findings.looks[verdict.look].toward[worst_at(verdict)];
    std::set<std::pair<double, double>> expected = {{0, 0},    {-45, 0},   {-45, 15}, {80, 15},
                                                    {80, -15}, {-20, -15}, {-20, 0}};
    expected.emplace(in_degrees(worst.h), in_degrees(worst.v));
    CHECK(directions_of(pictures) == expected);
    CHECK(pictures.eyes.size() == expected.size());
    CHECK(pictures.eyes.front().toward == worst);
    for (const EyePicture& p : pictures.eyes) {
        CHECK(p.checks == std::vector<std::size_t>{0, 1});
        CHECK(p.figure.is_picture);
        CHECK(p.figure.drawing.width == 400);
        CHECK(p.figure.drawing.height == 250);
    }
    REQUIRE(pictures.vehicles.size() == 2);
    CHECK(pictures.vehicles[1].check == 1);
}

TEST_CASE("an eye's view tells the figures of the findings", "[drawing]")
{
    const Session session(pictured_study());
    const Findings findings = findings_of(session);
    const Pictures pictures = pictures_of(session, findings, {});
    const LampLook& look = findings.looks.front();
    for (const EyePicture& p : pictures.eyes) {
        const auto at = static_cast<std::size_t>(
            std::find(look.toward.begin(), look.toward.end(), p.toward) - look.toward.begin());
        REQUIRE(at < look.toward.size());
        CHECK(p.figure.caption.find(": " + area_words(look.visible(at)) + " in view") !=
              std::string::npos);
        CHECK(p.figure.caption.find(area_words(look.seen[at].lens) + " with nothing") !=
              std::string::npos);
        CHECK(p.figure.alt.find(area_words(look.visible(at))) != std::string::npos);
    }
}

TEST_CASE("a direction that no check looks in has areas that were sampled for it", "[drawing]")
{
    const Session session(pictured_study());
    const Findings findings = findings_of(session);
    const EyeView view(session.study(), session.scene(), findings.looks.front());
    const ViewedAreas known = view.areas({});
    CHECK(known.from_look);
    CHECK(in_mm2(known.visible) == Approx(1200).margin(1));
    CHECK(in_mm2(known.visible + known.hidden) == Approx(2400));
    CHECK(in_mm2(known.own) == 0);
    const ViewedAreas other = view.areas({degrees(0.5), degrees(0)});
    CHECK_FALSE(other.from_look);
    CHECK_FALSE(other.exact);
    // The edge at y = 600 falls 100 tan 0.5 inboard on the lens.
    CHECK(in_mm2(other.visible) == Approx(40 * (30 + 0.8727)).epsilon(1e-3));
}

TEST_CASE("what hides a lamp is named where it hides", "[drawing]")
{
    const Session session(pictured_study());
    const Findings findings = findings_of(session);
    const EyeView view(session.study(), session.scene(), findings.looks.front());
    CHECK(view.toward({}, {}).caption.find(" mm2 hidden by flank. ") != std::string::npos);
    const Figure free = view.toward({degrees(60), degrees(0)}, {});
    CHECK(free.caption.find("hidden by") == std::string::npos);
    CHECK(free.caption.find("Hatched") == std::string::npos);
    CHECK(free.alt.find("nothing hidden") != std::string::npos);
    CHECK(free.title == "indicator from 60 deg outboard, level");
}

TEST_CASE("pictures are the same to the byte for any number of threads", "[drawing]")
{
    const Session session(pictured_study());
    const Findings findings = findings_of(session);
    const Workers one{.threads = 1, .stop = {}, .progress = {}};
    const Workers four{.threads = 4, .stop = {}, .progress = {}};
    const EyeView view(session.study(), session.scene(), findings.looks.front());
    const bool same = png_of(view.toward({}, one).drawing) == png_of(view.toward({}, four).drawing);
    CHECK(same);
    const auto vehicle = [&](const Workers& workers) {
        return png_of(pictures_of(session, findings, workers).vehicles.front().figure.drawing);
    };
    const bool same_vehicle = vehicle(one) == vehicle(four);
    CHECK(same_vehicle);
}

TEST_CASE("the vehicle view says what the sight line meets", "[drawing]")
{
    const Session session(pictured_study());
    const Findings findings = findings_of(session);
    const Figure figure = pictures_of(session, findings, {}).vehicles.front().figure;
    CHECK(figure.caption.find("it meets flank at the ring") != std::string::npos);
    CHECK(figure.caption.find("flank takes") != std::string::npos);

    Study free = pictured_study();
    free.surfaces[SurfaceId{1}].role = Role::ignored;
    const Session other(free);
    const Findings all_met = findings_of(other);
    const Figure unhidden = pictures_of(other, all_met, {}).vehicles.front().figure;
    CHECK(unhidden.caption.find("nothing is in its way") != std::string::npos);
}

TEST_CASE("a lamp whose axis points outboard is not pictured 45 degrees to the rear", "[drawing]")
{
    Study study = pictured_study();
    study.tables.front().rows.front().axis = ReferenceAxis::outboard;
    study.tables.front().rows.front().field = {
        {{degrees(-10), degrees(10), degrees(-5), degrees(5)}}};
    const Session session(study);
    const Pictures pictures = pictures_of(session, findings_of(session), {});
    CHECK_FALSE(pictures.eyes.empty());
    CHECK(directions_of(pictures).count({-45, 0}) == 0);
}

TEST_CASE("names that look like figures are drawn as they are", "[drawing]")
{
    // A word of the same letters that is no unit takes the same room.
    const auto letters_in = [](const std::string& lamp, const std::string& flank) {
        Study study = pictured_study();
        study.lamps[LampId{0}].name = lamp;
        study.surfaces[SurfaceId{1}].name = flank;
        const Session session(study);
        const Findings findings = findings_of(session);
        const Figure eye = EyeView(study, session.scene(), findings.looks.front()).toward({}, {});
        const Figure corner = pictures_of(session, findings, {}).vehicles.front().figure;
        std::size_t letters = 0;
        for (const Drawing& drawing : {eye.drawing, corner.drawing}) {
            const std::string svg = svg_of(drawing);
            for (std::size_t at = svg.find("<use "); at != std::string::npos;
                 at = svg.find("<use ", at + 1))
                ++letters;
        }
        return letters;
    };
    CHECK(letters_in("lamp 5 deg", "wall 7 deg") == letters_in("lamp 5 dge", "wall 7 dge"));
}

TEST_CASE("a check that looks in no direction has no picture", "[drawing]")
{
    Study study = pictured_study();
    study.tables.front().rows.front().criterion = LeastIntensity{};
    const Session session(study);
    const Pictures pictures = pictures_of(session, findings_of(session), {});
    CHECK(pictures.eyes.empty());
    CHECK(pictures.vehicles.empty());
}
