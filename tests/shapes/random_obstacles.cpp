#include "shapes/random_bodies.h"
#include "shapes/simple_shapes.h"

#include <Eigen/Geometry>

namespace glim::shapes {

namespace {

/// Within this of the touch distance rays, in float, and exact areas may differ in what they call
/// touching; scenes keep out of it.
constexpr double touch_doubt_mm = 1e-3;

TriangleMesh triangle(const Point& a, const Point& b, const Point& c)
{
    return {.points = {a, b, c}, .facets = {{0, 1, 2}}};
}

/// About `centre`, reaching `along` and `over` to either side.
TriangleMesh rectangle(const Point& centre, const Vector& along, const Vector& over)
{
    return {.points = {centre - along - over, centre + along - over, centre + along + over,
                       centre - along + over},
            .facets = {{0, 1, 2}, {0, 2, 3}}};
}

/// Near the lamp as a rule; at times up to 2 m away, where a float's grain is coarse.
double some_way(RandomNumbers& random)
{
    return random.percent(25) ? random.magnitude(60, 2000) : random.magnitude(0.3, 60);
}

/// A point in the way of the spot's direction.
Point before(RandomNumbers& random, const Spot& spot)
{
    return spot.at + some_way(random) * spot.toward.vector();
}

/// The same, up to so far aside.
Point about(RandomNumbers& random, const Spot& spot, double aside_mm)
{
    const Point straight = before(random, spot);
    return straight + random.across(spot.toward, 0, aside_mm);
}

TriangleMesh turned_anyhow(RandomNumbers& random, const TriangleMesh& mesh)
{
    const Direction axis = random.direction();
    return placed(mesh, Placement::turn(Point::Zero(), axis, degrees(random.real(0, 360))));
}

/// A pyramid on three sides, open or closed below.
TriangleMesh spike(RandomNumbers& random, double size_mm)
{
    TriangleMesh mesh{.points = {Point(0, 0, size_mm)},
                      .facets = {{0, 1, 2}, {0, 2, 3}, {0, 3, 1}}};
    for (int i = 0; i < 3; ++i)
        mesh.points.push_back(Point(0, 0, -size_mm) +
                              random.across(Direction::z(), 0.1 * size_mm, size_mm));
    if (random.percent(50))
        mesh.facets.push_back({3, 2, 1});
    return mesh;
}

struct Strip {
    Point centre;
    Direction along;
    double width_mm;
    double length_mm;
};

/// Lies across the view.
TriangleMesh strip(const Strip& s, const Spot& spot)
{
    const Vector over = spot.toward.vector().cross(s.along.vector()).normalized();
    return rectangle(s.centre, s.length_mm / 2 * s.along.vector(), s.width_mm / 2 * over);
}

TriangleMesh thin_bar(RandomNumbers& random, const Spot& spot)
{
    return strip({.centre = before(random, spot),
                  .along = random.across(spot.toward),
                  .width_mm = random.magnitude(0.005, 0.9) * spot.pitch_mm,
                  .length_mm = random.real(0.5, 40)},
                 spot);
}

TriangleMesh thin_rod(RandomNumbers& random, const Spot& spot)
{
    const Point centre = before(random, spot);
    const double thick = random.magnitude(0.01, 0.9) * spot.pitch_mm;
    const Vector half(thick / 2, thick / 3, random.real(1, 20));
    return moved(turned_anyhow(random, box(-half, half)), centre);
}

TriangleMesh grille(RandomNumbers& random, const Spot& spot)
{
    Strip bar{.centre = before(random, spot),
              .along = random.across(spot.toward),
              .width_mm = random.real(0.05, 0.6) * spot.pitch_mm,
              .length_mm = 20};
    const Vector step =
        random.real(0.4, 2.2) * spot.pitch_mm * spot.toward.vector().cross(bar.along.vector());
    bar.centre -= 2 * step;
    TriangleMesh bars;
    for (int i = 0; i < 5; ++i) {
        bars = joined(bars, strip(bar, spot));
        bar.centre += step;
    }
    return bars;
}

TriangleMesh slit(RandomNumbers& random, const Spot& spot)
{
    Strip side{.centre = before(random, spot),
               .along = random.across(spot.toward),
               .width_mm = random.real(3, 20),
               .length_mm = 30};
    const double gap = random.magnitude(0.002, 0.6) * spot.pitch_mm;
    const Vector apart =
        (gap + side.width_mm) * spot.toward.vector().cross(side.along.vector()).normalized();
    side.centre -= apart / 2;
    const TriangleMesh one = strip(side, spot);
    return joined(one, moved(one, apart));
}

TriangleMesh wedge(RandomNumbers& random, const Spot& spot)
{
    const Point tip = before(random, spot);
    const Direction away = random.across(spot.toward);
    const Vector half = random.magnitude(0.05, 15) * spot.toward.vector().cross(away.vector());
    const Point base = tip + 20 * away.vector() + random.real(-5, 5) * spot.toward.vector();
    return triangle(tip, base - half, base + half);
}

TriangleMesh pierced(RandomNumbers& random, const Spot& spot)
{
    const Vector along = random.vector(0.2, 10);
    return rectangle(spot.at, along, random.across(Direction::along(along), 0.2, 10));
}

TriangleMesh pierced_by_box(RandomNumbers& random, const Spot& spot)
{
    const Vector half = random.sides(0.1, 4);
    return moved(turned_anyhow(random, box(-half, half)), spot.at);
}

/// Small spikes and blocks, sunk into the face by part of their height, in a cluster: most of their
/// foot lies within one cell.
TriangleMesh studs(RandomNumbers& random, const Spot& spot)
{
    TriangleMesh all;
    for (int i = 0; i < 4; ++i) {
        const Point foot = spot.at + random.across(Direction::along(spot.normal), 0, 4);
        const double size = random.magnitude(0.1, 1.5) * spot.pitch_mm;
        const Vector half = size * random.sides(0.2, 1);
        const TriangleMesh block = random.percent(50) ? box(-half, half) : spike(random, size);
        all = joined(all, moved(turned_anyhow(random, block), foot));
    }
    return all;
}

/// A ball sunk so far that no outline of it shows from ahead, only where it pierces the face.
TriangleMesh cap(RandomNumbers& random, const Spot& spot)
{
    const double radius = random.magnitude(0.2, 8);
    const TriangleMesh body = ball(radius, 2 * random.whole(2, 5));
    return moved(turned_anyhow(random, body), spot.at - random.real(0.3, 1) * radius * spot.normal);
}

/// Pyramids that stick out of the face along the view, with their foot behind it.
TriangleMesh thorns(RandomNumbers& random, const Spot& spot)
{
    TriangleMesh all;
    for (int i = 0; i < 4; ++i) {
        const Point foot = spot.at + random.across(Direction::along(spot.normal), 0, 4);
        const TriangleMesh thorn = spike(random, random.magnitude(0.1, 1.5) * spot.pitch_mm);
        const Eigen::Matrix3d up =
            Eigen::Quaterniond::FromTwoVectors(Vector::UnitZ(), spot.toward.vector())
                .toRotationMatrix();
        all = joined(all,
                     moved(placed(thorn, Placement::axes(up, Eigen::Matrix3d::Identity())), foot));
    }
    return all;
}

/// Scraps that float so near to the face, or stick so little out of it, that some rays skip them.
TriangleMesh scraps(RandomNumbers& random, const Spot& spot)
{
    TriangleMesh all;
    for (int i = 0; i < 4; ++i) {
        const Point foot = spot.at + random.across(Direction::along(spot.normal), 0, 3);
        const Point at = foot + random.magnitude(0.2, 30) * spot.touch_mm * spot.normal;
        const Vector along = random.vector(0.05, 2);
        const Vector over = random.across(Direction::along(along), 0.05, 2);
        all = joined(all, triangle(at, at + along, at + along + over));
    }
    return all;
}

/// Parallel to the face at, within, just within, just beyond and well beyond the touch distance.
TriangleMesh touching(RandomNumbers& random, const Spot& spot)
{
    const std::array heights = {0.0,
                                spot.touch_mm / 2,
                                spot.touch_mm - touch_doubt_mm,
                                spot.touch_mm + touch_doubt_mm,
                                2 * spot.touch_mm,
                                1.0};
    const Direction normal = Direction::along(spot.normal);
    const Point centre = spot.at + random.one_of(heights) * spot.normal;
    const Vector along = random.across(normal, 0.3, 8);
    return rectangle(centre, along, random.real(0.1, 2) * spot.normal.cross(along));
}

/// Rises from an edge that lies on the face, at any slant.
TriangleMesh rising(RandomNumbers& random, const Spot& spot)
{
    const Vector half = random.across(Direction::along(spot.normal), 0.3, 10);
    const Vector lean = random.real(-1, 1) * spot.normal.cross(half).normalized();
    const Vector up = random.real(0.1, 5) * (spot.normal + lean);
    return joined(triangle(spot.at - half, spot.at + half, spot.at + half + up),
                  triangle(spot.at - half, spot.at + half + up, spot.at - half + up));
}

/// The same cover twice or three times, cut in other ways, in part or in whole.
TriangleMesh coincident(RandomNumbers& random, const Spot& spot)
{
    const Point c = before(random, spot);
    const Vector along = random.across(spot.toward, 0.5, 8);
    const Vector over = random.real(0.2, 2) * spot.toward.vector().cross(along);
    TriangleMesh covers = rectangle(c, along, over);
    TriangleMesh other_cut = covers;
    other_cut.facets = {{1, 2, 3}, {3, 1, 0}};
    covers = joined(covers, other_cut);
    if (random.percent(50))
        covers = joined(covers, rectangle(c + along / 2, along / 2, over));
    return covers;
}

/// The lit face's own outline before itself: edges over edges, corners over corners.
TriangleMesh outline_over_outline(RandomNumbers& random, const Spot& spot)
{
    std::vector<std::uint32_t> facets = {0};
    for (std::uint32_t f = 1; f < spot.lit->facets.size(); ++f)
        if (random.percent(40))
            facets.push_back(f);
    return moved(part_of(*spot.lit, facets), some_way(random) * spot.toward.vector());
}

/// Upon the lit face itself or close before it, wound either way.
TriangleMesh skin(RandomNumbers& random, const Spot& spot)
{
    const double height_mm = random.percent(30) ? 0 : random.magnitude(1.1, 16) * spot.touch_mm;
    const TriangleMesh copy = moved(*spot.lit, height_mm * spot.normal);
    return random.percent(50) ? turned_over(copy) : copy;
}

TriangleMesh crossing(RandomNumbers& random, const Spot& spot)
{
    const Point centre = before(random, spot);
    const Vector along = random.vector(1, 10);
    const Vector over = random.across(Direction::along(along), 0.5, 6);
    const Vector upright = random.real(0.5, 6) * along.cross(over).normalized();
    return joined(rectangle(centre, along, over), rectangle(centre, along, upright));
}

/// Three sheets on one edge, which they share.
TriangleMesh three_leaves(RandomNumbers& random, const Spot& spot)
{
    const Point foot = before(random, spot);
    const Vector edge = random.vector(1, 12);
    TriangleMesh leaves{.points = {foot, foot + edge}, .facets = {}};
    for (std::uint32_t i = 0; i < 3; ++i) {
        leaves.points.push_back(foot + random.across(Direction::along(edge), 1, 8));
        leaves.facets.push_back({0, 1, i + 2});
    }
    return leaves;
}

TriangleMesh block(RandomNumbers& random, const Spot& spot)
{
    const Vector half = random.sides(0.5, 6);
    return moved(box(-half, half), about(random, spot, 8));
}

TriangleMesh round_body(RandomNumbers& random, const Spot& spot)
{
    const TriangleMesh body = ball(random.real(0.3, 6), 6);
    return moved(body, about(random, spot, 6));
}

/// Next to nothing and nothing: a facet of hardly any width, one of two corners, one of one.
TriangleMesh needle(RandomNumbers& random, const Spot& spot)
{
    const Point tip = before(random, spot);
    const Direction away = random.across(spot.toward);
    const Vector over = spot.toward.vector().cross(away.vector());
    const Point end = tip + 15 * away.vector();
    TriangleMesh mesh = triangle(tip, end, end + random.magnitude(1e-9, 1e-2) * over);
    mesh.facets.push_back({0, 1, 1});
    mesh.facets.push_back({2, 2, 2});
    mesh.facets.push_back({0, 1, 2});
    return mesh;
}

/// From far in front of the facet's plane to far behind it, beside the spot.
TriangleMesh across_the_plane(RandomNumbers& random, const Spot& spot)
{
    const Vector aside = random.across(spot.toward, 0.01, 4);
    const Vector over = spot.toward.vector().cross(aside).normalized();
    const Vector along = 30 * (spot.toward.vector() + random.real(-0.1, 0.1) * aside);
    return rectangle(spot.at + aside, along, random.real(0.3, 8) * over);
}

constexpr std::array kinds = {
    ObstacleKind{"thin-bar", thin_bar},
    ObstacleKind{"thin-rod", thin_rod},
    ObstacleKind{"grille", grille},
    ObstacleKind{"slit", slit},
    ObstacleKind{"wedge", wedge},
    ObstacleKind{"pierced", pierced},
    ObstacleKind{"pierced-by-a-box", pierced_by_box},
    ObstacleKind{"studs", studs},
    ObstacleKind{"cap", cap},
    ObstacleKind{"thorns", thorns},
    ObstacleKind{"scraps", scraps},
    ObstacleKind{"touching", touching},
    ObstacleKind{"rising", rising},
    ObstacleKind{"coincident", coincident},
    ObstacleKind{"outline-over-outline", outline_over_outline},
    ObstacleKind{"skin", skin},
    ObstacleKind{"crossing", crossing},
    ObstacleKind{"three-leaves", three_leaves},
    ObstacleKind{"block", block},
    ObstacleKind{"round-body", round_body},
    ObstacleKind{"needle", needle},
    ObstacleKind{"across-the-plane", across_the_plane},
};

} // namespace

std::span<const ObstacleKind> obstacle_kinds() { return kinds; }

} // namespace glim::shapes
