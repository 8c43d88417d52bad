#include "drawing/blocking_mesh.h"

#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

#include <stdexcept>

using namespace glim;

namespace {

const LampVerdict& verdict_of(const Findings& findings)
{
    return findings.checks[0].deciding_verdict();
}

} // namespace

TEST_CASE("a twin in the way stands on the far side, with its facets' numbers and areas",
          "[report]")
{
    const Findings findings = test::made_findings();
    const auto surfaces = blocking_surfaces(verdict_of(findings), test::made_study());
    REQUIRE(surfaces.size() == 2);
    const BlockingSurface& nose = surfaces[0];
    CHECK(nose.twin);
    REQUIRE(nose.facets.size() == 10); // all lie within 150 mm of the patch
    for (std::size_t f = 0; f < 10; ++f) {
        CHECK(nose.facets[f] == f);
        CHECK(nose.mesh.corner(f, 0).y() == -660);
        CHECK(in_mm2(nose.taken[f]) == (f == 7 ? 990 : f == 3 ? 10 : 0));
    }
    // Drawn it looks along -y, and so does its facets' winding; the twin looks along +y.
    CHECK(area_vector(nose.mesh, 0).y() == Approx(50));
    CHECK(!surfaces[1].twin);
    CHECK(surfaces[1].mesh.corner(0, 0).y() == 0);
}

TEST_CASE("colour goes by what a facet takes for its size, on one scale for all surfaces",
          "[report]")
{
    // 990, 10 and 50 mm2 taken by facets of 50 mm2 each: the first alone is a tenth of all.
    const Findings findings = test::made_findings();
    const auto surfaces = blocking_surfaces(verdict_of(findings), test::made_study());
    CHECK(surfaces[0].strength[7] == 1);
    CHECK(surfaces[0].strength[3] == Approx(10.0 / 990));
    CHECK(surfaces[0].strength[0] == 0);
    CHECK(surfaces[1].strength[0] == Approx(50.0 / 990));
}

TEST_CASE("a sliver that takes little for itself does not pale the rest", "[drawing]")
{
    Study study = test::made_study();
    // The badge becomes a sliver of 0.05 mm2 that takes 50 mm2: less than a tenth of all.
    study.surfaces[SurfaceId{1}].mesh.points[1] = {175.01, 0, 695};
    const Findings findings = test::made_findings();
    const auto surfaces = blocking_surfaces(verdict_of(findings), study);
    CHECK(surfaces[1].strength[0] == 1);
    CHECK(surfaces[0].strength[7] == 1);
}

TEST_CASE("what lies far from the patch is left out, unless it takes something", "[drawing]")
{
    Study study = test::made_study();
    TriangleMesh& nose = study.surfaces[SurfaceId{0}].mesh;
    // The patch lies between z = 639.5 and 702; facets 2 and 3 go far up.
    for (const std::size_t f : {2, 3})
        for (const std::uint32_t corner : nose.facets[f])
            nose.points[corner].z() += 1000;
    const Findings findings = test::made_findings();
    const auto surfaces = blocking_surfaces(verdict_of(findings), study);
    CHECK(surfaces[0].facets == std::vector<std::uint32_t>{0, 1, 3, 4, 5, 6, 7, 8, 9});
    CHECK(in_mm2(surfaces[0].taken[2]) == 10);
}

TEST_CASE("a surface that the study does not have is our own mistake", "[drawing]")
{
    const Findings findings = test::made_findings();
    CHECK_THROWS_AS(blocking_surfaces(verdict_of(findings), Study()), std::logic_error);
}
