#include "visibility/body_picture.h"

#include "shapes/simple_shapes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using namespace glim::shapes;

namespace {

BodyPicture picture_of(const std::vector<TriangleMesh>& bodies, const Direction& toward,
                       unsigned threads = 0)
{
    const Caster caster = Caster::flat(bodies);
    PicturedBodies pictured{caster, {}, Point::Zero()};
    for (const TriangleMesh& mesh : bodies)
        pictured.meshes.push_back({&mesh, Placement()});
    PictureFrame frame = picture_frame(toward, Direction::z(), Direction::x());
    frame.pixel = millimetres(0.5);
    frame.width = 240;
    frame.height = 200;
    return body_picture(pictured, frame, {.threads = threads, .stop = {}, .progress = {}});
}

const BodySample& at(const BodyPicture& picture, double column_share, double row_share)
{
    const std::uint32_t columns = picture.frame.width * samples_a_side;
    const std::uint32_t rows = picture.frame.height * samples_a_side;
    return picture.samples[static_cast<std::size_t>(row_share * rows) * columns +
                           static_cast<std::size_t>(column_share * columns)];
}

} // namespace

TEST_CASE("a ball fills its disc, and its middle is nearest to the eye", "[visibility]")
{
    const BodyPicture picture = picture_of({ball(40, 96)}, Direction::along({1, 0.3, 0.2}));
    const auto filled = std::count_if(picture.samples.begin(), picture.samples.end(),
                                      [](const BodySample& s) { return s.any(); });
    // pi r^2; facets lie inside the ball by less than 0.3 % of its area
    CHECK(filled * in_mm2(area_of_sample(picture.frame)) ==
          Approx(3.14159265 * 1600).epsilon(0.005));
    CHECK(at(picture, 0.5, 0.5).depth == Approx(40).margin(0.1));
    CHECK(at(picture, 0.5, 0.5).slant.z() == Approx(1).margin(0.01));
    CHECK(at(picture, 0.75, 0.5).slant.x() > 0.5);
    CHECK(at(picture, 0.5, 0.3).slant.y() > 0.5);
    CHECK_FALSE(at(picture, 0.01, 0.01).any());
}

TEST_CASE("what stands nearer to the eye is in the picture", "[visibility]")
{
    const std::vector<TriangleMesh> walls = {wall(0, -50, 50, -40, 40), wall(30, 0, 50, -40, 40)};
    const BodyPicture ahead = picture_of(walls, Direction::x());
    CHECK(at(ahead, 0.4, 0.5).part == 0);
    CHECK(at(ahead, 0.6, 0.5).part == 1);
    const BodyPicture behind = picture_of(walls, -Direction::x());
    CHECK(at(behind, 0.4, 0.5).part == 0); // seen from behind, y runs to the left
    CHECK(at(behind, 0.6, 0.5).part == 0);
}

TEST_CASE("a hollow is darker than an open face, and both sides of a face look alike",
          "[visibility]")
{
    const TriangleMesh floor = plate(Point::Zero(), 40, 40);
    const BodyPicture open = picture_of({floor}, Direction::x());
    const BodyPicture hollow = picture_of({floor, recess_walls(40, 40, 30)}, Direction::x());
    const float light = at(open, 0.5, 0.5).light;
    CHECK(light > 0.6);
    CHECK(at(hollow, 0.5, 0.5).part == 0);
    CHECK(at(hollow, 0.5, 0.5).light < 0.9 * light);
    // In the corner more of the sky is closed than in the middle.
    CHECK(at(hollow, 0.35, 0.58).light < 0.93 * at(hollow, 0.5, 0.5).light);
    const BodyPicture turned = picture_of({turned_over(floor)}, Direction::x());
    CHECK(at(turned, 0.5, 0.5).light == light);
    CHECK(at(open, 0.4, 0.45).light == light); // one slant, one light: there is no noise
}

TEST_CASE("a body picture is the same for any number of threads", "[visibility]")
{
    const std::vector<TriangleMesh> bodies = {ball(40, 32), wall(30, 0, 50, -40, 40),
                                              box({-20, -60, -50}, {60, 60, -30})};
    const Direction toward = Direction::along({1, 0.5, 0.4});
    const BodyPicture one = picture_of(bodies, toward, 1);
    const BodyPicture five = picture_of(bodies, toward, 5);
    CHECK(std::equal(one.samples.begin(), one.samples.end(), five.samples.begin(),
                     five.samples.end(), [](const BodySample& a, const BodySample& b) {
                         return a.part == b.part && a.facet == b.facet && a.depth == b.depth &&
                                a.light == b.light && a.slant == b.slant;
                     }));
}
