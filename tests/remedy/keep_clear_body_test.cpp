#include "remedy/keep_clear_body.h"

#include "geometry/covered_area.h"
#include "geometry/mesh_health.h"
#include "remedy/keep_clear_scenes.h"
#include "remedy/prism_body.h"
#include "shapes/random_numbers.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using namespace glim::test;

namespace {

const ConvexPolygon& room()
{
    static const ConvexPolygon all = rectangle(-300, 700, -600, 600);
    return all;
}

/// A mesh's facets sorted into squares of the plan, so that a vertical line meets few.
class VerticalLines {
public:
    explicit VerticalLines(const TriangleMesh& mesh) : mesh_(mesh), box_(box_of(mesh))
    {
        cells_.resize(squares * squares);
        for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
            Box box;
            for (int i = 0; i < 3; ++i)
                box.add(mesh.corner(f, i));
            for (int x = square(box.least.x(), 0); x <= square(box.most.x(), 0); ++x)
                for (int y = square(box.least.y(), 1); y <= square(box.most.y(), 1); ++y)
                    cells_[x * squares + y].push_back(f);
        }
    }

    /// Whether a vertical line upward from `p` leaves the closed mesh once more than it enters.
    bool holds(const Point& p) const
    {
        if (!box_.holds(p))
            return false;
        int leaves = 0;
        for (const std::size_t f : cells_[square(p.x(), 0) * squares + square(p.y(), 1)])
            leaves += crossing(f, p);
        return leaves > 0;
    }

private:
    static constexpr int squares = 200;
    int square(double at, int axis) const
    {
        const double share = (at - box_.least[axis]) / box_.size()[axis];
        return std::clamp(static_cast<int>(share * squares), 0, squares - 1);
    }
    int crossing(std::size_t f, const Point& p) const
    {
        const auto side = [&](int i) {
            const Point2 a = mesh_.corner(f, i).head<2>() - p.head<2>();
            const Point2 b = mesh_.corner(f, (i + 1) % 3).head<2>() - p.head<2>();
            return cross(a, b);
        };
        const std::array<double, 3> s = {side(1), side(2), side(0)};
        const double sum = s[0] + s[1] + s[2];
        const bool around =
            (s[0] > 0 && s[1] > 0 && s[2] > 0) || (s[0] < 0 && s[1] < 0 && s[2] < 0);
        if (!around)
            return 0;
        const double z = (s[0] * mesh_.corner(f, 0).z() + s[1] * mesh_.corner(f, 1).z() +
                          s[2] * mesh_.corner(f, 2).z()) /
                         sum;
        return z < p.z() ? 0 : sum > 0 ? 1 : -1;
    }

    const TriangleMesh& mesh_;
    Box box_;
    std::vector<std::vector<std::size_t>> cells_;
};

void check_closed(const TriangleMesh& mesh)
{
    const MeshHealth health = health_of(welded(mesh));
    CHECK(health.boundary_edges == 0);
    CHECK(health.non_manifold_edges == 0);
    CHECK(health.winding_conflicts == 0);
}

/// Of the mesh's section at that height: edges run counter-clockwise about it.
double section_area(const TriangleMesh& mesh, double z)
{
    double twice = 0;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        std::vector<Point2> up, down;
        for (int i = 0; i < 3; ++i) {
            const Point& a = mesh.corner(f, i);
            const Point& b = mesh.corner(f, (i + 1) % 3);
            if ((a.z() < z) == (b.z() < z))
                continue;
            const Point2 at = (a + (z - a.z()) / (b.z() - a.z()) * (b - a)).head<2>();
            (a.z() < z ? up : down).push_back(at);
        }
        if (up.size() == 1 && down.size() == 1)
            twice += cross(up[0], down[0]);
    }
    return -twice / 2;
}

} // namespace

// Lens w by g at x = 0, field of a either way and b up and down, cut at x = X with tan(a) X < w/2:
// at (x, y) the farthest part of the lens within the field is x / cos(a) away, so that
// V = g (w X + X^2 tan a) + 2 tan b / cos a (w X^2 / 2 + 2/3 X^3 tan a).
TEST_CASE("the body of a flat lamp cut by a box has its volume in closed form", "[remedy]")
{
    const double w = 1000, g = 100, X = 800;
    const Angle a = degrees(30), b = degrees(15);
    const double closed = g * (w * X + X * X * tan(a)) +
                          2 * tan(b) / cos(a) * (w * X * X / 2 + 2. / 3 * X * X * X * tan(a));
    const KeepClearSet set = set_of(shapes::plate(Point(0, 0, 0), w, g, 2), {{-a, a, -b, b}});
    for (const double chord : {2.0, 0.5}) {
        const KeepClearBody body =
            keep_clear_body(set, rectangle(-10, X, -2000, 2000), millimetres(chord), {});
        check_closed(body.mesh);
        CHECK(body.within == millimetres(chord));
        CHECK(in_mm3(body.volume) >= closed);
        double surface = in_mm2(area_of(body.mesh));
        CHECK(in_mm3(body.volume) <= closed + chord * surface);
        CHECK(in_mm3(body.volume) == Approx(in_mm3(enclosed_volume(body.mesh))));
    }
}

TEST_CASE("a body holds its set and no point of it is farther from it than stated", "[remedy]")
{
    struct Scene {
        const char* name;
        TriangleMesh lit;
        std::vector<FieldRectangle> toward;
    };
    const std::vector<Scene> scenes = {
        {"flat", shapes::plate(Point(0, 0, 0), 150, 60, 2), {field(-45, 80, -15, 15)}},
        {"raked", raked_lens(), {field(-45, 80, -15, 15)}},
        {"wrapped", wrapped_lens(), {field(-45, 80, -15, 15)}},
        {"notched", raked_lens(), {field(-45, 80, 0, 15), field(-20, 80, -15, 0)}},
    };
    shapes::RandomNumbers random(81);
    for (const Scene& scene : scenes) {
        INFO(scene.name);
        const double chord = 4;
        const KeepClearSet set = set_of(scene.lit, scene.toward);
        const KeepClearBody body = keep_clear_body(set, room(), millimetres(chord), {});
        CHECK(body.within == millimetres(chord));
        check_closed(body.mesh);
        const VerticalLines lines(body.mesh);
        std::size_t inside = 0, lost = 0, wide = 0;
        for (int i = 0; i < 100'000; ++i) {
            const Point p(random.real(-300, 700), random.real(-600, 600), random.real(-250, 250));
            const bool held = set.holds(p);
            const bool meshed = lines.holds(p);
            inside += held ? 1 : 0;
            lost += held && !meshed ? 1 : 0;
            if (held || !meshed)
                continue;
            // In the mesh alone: the set must be near. Looked for in many directions.
            bool near = false;
            for (int k = 0; k < 400 && !near; ++k)
                near = set.holds(p + random.real(0, 1) * chord * random.direction().vector());
            wide += near ? 0 : 1;
        }
        CHECK(inside > 5000);
        CHECK(lost == 0);
        CHECK(wide == 0);
    }
}

// At the lens's own heights every place of the wedges that its points sweep belongs to the set; the
// union of these wedges is computed by polygons alone.
TEST_CASE("a level section is the union of what the lamp's points sweep", "[remedy]")
{
    const TriangleMesh lens = shapes::plate(Point(0, 0, 0), 150, 60, 1);
    const FieldRectangle toward = field(-45, 80, -15, 15);
    const double chord = 1;
    const KeepClearBody body =
        keep_clear_body(set_of(lens, {toward}), room(), millimetres(chord), {});
    // Above the lens by dz a point of its upper edge reaches from r = dz / tan 15 on: the sector of
    // that radius is left out of its wedge.
    for (const double dz : {0.0, 20.0, 60.0}) {
        const double from = dz / tan(degrees(15)) / cos(degrees(2.5)); // outside the arc
        std::vector<PlaneTriangle> swept;
        const auto add = [&](const Point2& a, const Point2& b, const Point2& c) {
            const ConvexPolygon part = common_part({a, b, c}, room());
            for (std::size_t i = 2; i < part.size(); ++i)
                swept.push_back({part[0], part[i - 1], part[i]});
        };
        for (int i = 0; i <= 150; i += 10)
            for (int h = -45; h < 80; h += 5) {
                const Point2 at(0, -75 + i);
                const Point2 d0(cos(degrees(h)), sin(degrees(h)));
                const Point2 d1(cos(degrees(h + 5)), sin(degrees(h + 5)));
                add(at + from * d0, at + 1500 * d0, at + 1500 * d1);
                add(at + from * d0, at + 1500 * d1, at + from * d1);
            }
        const double expected = in_mm2(covered_area(swept));
        const double found = section_area(body.mesh, dz == 0 ? 0.0 : 30 + dz);
        INFO("dz " << dz);
        CHECK(found >= expected);
        // The body's surface leans by 15 degrees there: level, the chord error is 1 / sin 15 wide.
        CHECK(found <= expected + 3500 * chord / sin(degrees(15)));
    }
}

// One strip of the lens stands edge-on to a field of no width: its space is a sheet, thin as paper.
TEST_CASE("a field of no width has a body too, wherever the lens stands edge-on to it", "[remedy]")
{
    const TriangleMesh lens = shapes::cylinder_wall(120, 60, degrees(0), degrees(90), 9);
    for (const double h : {-45.0, -15.0, 45.0})
        for (const double chord : {1.0, 4.0}) {
            INFO("H " << h << ", chord error " << chord);
            const KeepClearSet set = set_of(lens, {field(h, h, -15, 0), field(h, h, 0, 15)});
            const KeepClearBody body = keep_clear_body(set, room(), millimetres(chord), {});
            CHECK(body.within == millimetres(chord));
            check_closed(body.mesh);
        }
}

TEST_CASE("a wider field needs a larger space", "[remedy]")
{
    Volume before;
    for (const auto& [h, v] : {std::pair{20, 5}, {45, 5}, {45, 15}, {80, 15}}) {
        const KeepClearBody body = keep_clear_body(set_of(raked_lens(), {field(-20, h, -v, v)}),
                                                   room(), millimetres(4), {});
        CHECK(body.volume > before);
        before = body.volume;
    }
}

TEST_CASE("a body is the same on any number of threads", "[remedy]")
{
    const KeepClearSet set = set_of(raked_lens(), {field(-45, 80, -15, 15)});
    const auto with = [&](unsigned threads) {
        return keep_clear_body(set, room(), millimetres(5),
                               {.threads = threads, .stop = {}, .progress = {}})
            .mesh;
    };
    const TriangleMesh one = with(1), four = with(4);
    CHECK(one.facets == four.facets);
    CHECK(one.points == four.points);
}
