// The main job on a mesh that others made, with all that real files hold. Registered only where the
// mesh could be fetched (tests/motorcycle/fetch.sh).

#include "input/read_study.h"
#include "judgement/check_study.h"
#include "shapes/box_tree.h"
#include "visibility/prepared_scene.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

const std::filesystem::path study_file = GLIM_SOURCE_DIR "/tests/motorcycle/motorcycle.toml";

/// The visible area by another library's rays in double, one from the middle of every cell: a cell
/// counts wholly or not at all.
double area_by_box_tree(const LitLattice& lattice, const BoxTree& tree, const Direction& toward)
{
    double sum = 0;
    for (const LitLattice::Cell& cell : lattice.cells()) {
        const double cosine = toward.dot(lattice.facets()[cell.facet].normal);
        if (cosine <= 0)
            continue;
        Point middle = Point::Zero();
        for (const LitLattice::Index v : cell.corners)
            middle += lattice.vertices()[v] / 3;
        const double skip = 0.05 / std::max(cosine, 0.05);
        if (!tree.blocks(middle + skip * toward.vector(), toward))
            sum += cell.area_mm2 * cosine;
    }
    return sum;
}

} // namespace

TEST_CASE("a lit face that looks inward is asked about and not guessed", "[motorcycle]")
{
    const Study study = read_study(study_file);
    const Surface& lit = study.surfaces[study.lamps[LampId{0}].emits.front()];
    Vector net = Vector::Zero();
    for (std::size_t f = 0; f < lit.mesh.facets.size(); ++f)
        net += area_vector(lit.mesh, f);
    CHECK(study.vehicle.forward.dot(net) > 0); // flipped, as the study says
}

TEST_CASE("nothing of a real mesh is dropped", "[motorcycle]")
{
    const Study study = read_study(study_file);
    std::size_t kept = 0;
    for (const Surface& s : study.surfaces)
        kept += s.mesh.facets.size();
    CHECK(kept == 331653); // `f` lines of the file, all of them triangles
    CHECK(study.meshes.front().health.duplicate > 30000);
    CHECK(study.meshes.front().health.non_manifold_edges > 0);
}

TEST_CASE("the motorcycle's lit face shows what an independent box tree says", "[motorcycle]")
{
    const Study study = read_study(study_file);
    const Findings findings = check_study(study);
    const LampLook& look = findings.looks.front();

    const PreparedScene scene(study);
    const LampStanding lamp{LampId{0}, false};
    std::vector<TriangleMesh> obstacles;
    for (const Standing& s : scene.obstacles_of(lamp))
        obstacles.push_back(study.surfaces[s.surface].mesh);
    const BoxTree tree(obstacles);
    const LitLattice lattice(scene.lit_surface_of(lamp), millimetres(2));
    const ExactView exact = scene.exact_view_of(lamp, study.sampling.touch);

    std::size_t partly_hidden = 0;
    for (std::size_t i = 0; i < look.toward.size(); ++i) {
        const Direction toward = direction_of(look.toward[i], look.frame);
        const double independent = area_by_box_tree(lattice, tree, toward);
        const double lens = in_mm2(look.seen[i].lens);
        CAPTURE(in_degrees(look.toward[i].h), in_degrees(look.toward[i].v), lens);
        partly_hidden += look.seen[i].hidden() > square_millimetres(10) ? 1 : 0;
        // Whole cells of at most 2 mm along the rim of the shadow err to both sides.
        CHECK(in_mm2(look.seen[i].visible) == Approx(independent).margin(0.005 * lens + 1));
        CHECK(in_mm2(exact.toward(toward).visible) == Approx(independent).margin(0.005 * lens + 1));
    }
    CHECK(partly_hidden > 0);
    CHECK(findings.checks.front().outcome != Outcome::undecided);
}
