#include "generator/lamp_unit.h"

#include "generator/body_net.h"
#include "geometry/facet_distance.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

#include <algorithm>
#include <stdexcept>

namespace {

using namespace glim;
using namespace glim::demo;

const std::vector<Part>& parts()
{
    static const std::vector<Part> all =
        lamp_unit(Skin(body_surface(), {pushed_by(ArchFlare{18, 75})}));
    return all;
}

const TriangleMesh& part(const std::string& name)
{
    for (const Part& p : parts())
        if (p.name == name)
            return p.mesh;
    throw std::runtime_error("no part " + name);
}

double least_distance_mm(const TriangleMesh& from, const TriangleMesh& to)
{
    Length least = millimetres(1e9);
    for (const Point& p : from.points)
        for (std::size_t f = 0; f < to.facets.size(); ++f)
            least = std::min(least, distance_to_facet(to, f, p));
    return in_mm(least);
}

TEST_CASE("the clear cover touches no lens", "[demo]")
{
    for (const char* lens : {"indicator_lens", "position_lens", "dipped_beam_lens"})
        CHECK(least_distance_mm(part(lens), part("lamp_cover")) > 1);
}

TEST_CASE("the indicator's lens lies 3 mm or more behind the face of its bezel", "[demo]")
{
    // Where the two are nearest in height: the lens's upper edge and the lip just above it.
    double face = 1e9;
    double lens = 1e9;
    for (const Point& p : part("lamp_bezel").points)
        if (p.y() > 580 && p.y() < 590 && p.z() > 705 && p.z() < 713)
            face = std::min(face, p.x());
    for (const Point& p : part("indicator_lens").points)
        if (p.y() > 580 && p.y() < 590 && p.z() > 700)
            lens = std::min(lens, p.x());
    CHECK(lens - face > 3);
    CHECK(lens - face < 20);
}

TEST_CASE("the indicator's lens is of realistic size and faces forward and outboard", "[demo]")
{
    const TriangleMesh& lens = part("indicator_lens");
    Vector sum = Vector::Zero();
    for (const Facet& f : lens.facets) {
        const Point& a = lens.points[f[0]];
        sum += Vector(lens.points[f[1]] - a).cross(Vector(lens.points[f[2]] - a)) / 2;
    }
    // 130 x 55 mm seen from ahead, less its roundings and slants.
    CHECK(-sum.x() > 6000);
    CHECK(-sum.x() < 7150);
    CHECK(sum.y() > 0.2 * -sum.x());
    CHECK(sum.y() < 0.7 * -sum.x());
}

} // namespace
