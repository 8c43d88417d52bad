#include "generator/skin.h"

#include "generator/body_net.h"

#include <catch2/catch.hpp>

#include <cmath>

namespace {

using namespace glim;
using namespace glim::demo;

const Swelling bump{{2, 5}, {3, 6}, {4, 7}, {5, 8}, {-10, 0, 3}};

TEST_CASE("a swelling moves its core by all of its push and its border not at all", "[demo]")
{
    const Push push = pushed_by(bump);
    const Point anywhere(1, 2, 3);
    CHECK(push({3.5, 6.2}, anywhere) == bump.push);
    for (const Point2& border : {Point2(2, 6.5), Point2(5, 6.5), Point2(3.5, 5), Point2(3.5, 8)})
        CHECK(push(border, anywhere).norm() == 0);
    CHECK(push({1, 6.5}, anywhere).norm() == 0);
    // Half way down a symmetric fairing half of the push is left.
    CHECK((push({2.5, 6.5}, anywhere) - bump.push / 2).norm() < 1e-12);
}

TEST_CASE("the skin is found again from the front and from the side", "[demo]")
{
    const Skin skin(body_surface(), {pushed_by(ArchFlare{18, 75})});
    const Point front = skin.at(skin.from_front(600, 690, {8, 7}));
    CHECK(front.y() == Approx(600).margin(1e-6));
    CHECK(front.z() == Approx(690).margin(1e-6));
    const Point side = skin.at(skin.from_side(0, 690, {12, 7}));
    CHECK(side.x() == Approx(0).margin(1e-6));
    CHECK(side.z() == Approx(690).margin(1e-6));
    CHECK_THROWS_AS(skin.from_front(600, 5000, {8, 7}), std::runtime_error);
}

TEST_CASE("the skin looks forward at the nose, outboard at the wing, upward at the bonnet",
          "[demo]")
{
    const Skin skin(body_surface(), {});
    CHECK(skin.normal({1, 7}).x() < -0.8);
    CHECK(skin.normal({13, 7}).y() > 0.9);
    CHECK(skin.normal({2, 11}).z() > 0.9);
}

TEST_CASE("the skin meets the median plane at a right angle to it", "[demo]")
{
    const Skin skin(body_surface(), {});
    for (double v = 0; v <= 12; v += 0.5) {
        CHECK(skin.at({0, v}).y() == 0);
        CHECK(std::abs(skin.normal({0, v}).y()) < 1e-8);
    }
}

} // namespace
