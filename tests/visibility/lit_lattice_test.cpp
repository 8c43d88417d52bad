#include "visibility/lit_lattice.h"

#include "geometry/weld.h"
#include "shapes/random_numbers.h"
#include "shapes/simple_shapes.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using namespace glim::shapes;

namespace {

constexpr Length pitch = millimetres(1.6);

TriangleMesh facet_of(const Point2& a, const Point2& b, const Point2& c)
{
    return {{{0, a.x(), a.y()}, {0, b.x(), b.y()}, {0, c.x(), c.y()}}, {{0, 1, 2}}};
}

/// The widest straight bar, at this angle, that runs between corners of the facet and meets none.
double widest_slip_mm(const LitLattice& lattice, Angle angle)
{
    std::vector<double> across;
    for (const Point& p : lattice.vertices())
        across.push_back(cos(angle) * p.y() + sin(angle) * p.z());
    std::sort(across.begin(), across.end());
    double widest = 0;
    for (std::size_t i = 1; i < across.size(); ++i)
        widest = std::max(widest, across[i] - across[i - 1]);
    return widest;
}

double widest_slip_mm(const LitLattice& lattice)
{
    double widest = 0;
    for (int degree = 0; degree < 180; ++degree)
        widest = std::max(widest, widest_slip_mm(lattice, degrees(degree)));
    return widest;
}

double area_of_cells(const LitLattice& lattice)
{
    double sum = 0;
    for (const LitLattice::Cell& cell : lattice.cells())
        sum += cell.area_mm2;
    return sum;
}

} // namespace

TEST_CASE("no bar of the pitch's width slips between a facet's corners", "[visibility]")
{
    RandomNumbers s(7);
    for (int i = 0; i < 300; ++i) {
        const auto corner = [&] { return Point2(s.real(-8, 8), s.real(-8, 8)); };
        const TriangleMesh facet = facet_of(corner(), corner(), corner());
        const LitLattice lattice(facet, pitch);
        CHECK(widest_slip_mm(lattice) <= in_mm(pitch) + 1e-9);
        CHECK(area_of_cells(lattice) == Approx(in_mm2(area_of(facet))));
    }
}

// Its apex stands 50 mm beside a base of 1 mm: the rows are a hair apart, but not their ends.
TEST_CASE("a sliver that leans over has rows along its whole length", "[visibility]")
{
    const LitLattice lattice(facet_of({0, 0}, {1, 0}, {51, 0.5}), pitch);
    CHECK(widest_slip_mm(lattice) <= in_mm(pitch) + 1e-9);
    CHECK(lattice.vertices().size() < 100);
}

TEST_CASE("facets that share an edge share the corners on it", "[visibility]")
{
    const LitLattice lattice(welded(plate(Point::Zero(), 3, 3, 2)), pitch);
    // Sides of 1.5 mm stay whole; a diagonal of 2.12 mm has one corner more at most, and a facet
    // one inside.
    CHECK(lattice.vertices().size() <= 9 + 4 + 8);
    CHECK(area_of_cells(lattice) == Approx(9));
}
