#include "visibility/rim_doubts.h"

#include "geometry/box_tree.h"
#include "units/trig.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace glim {

namespace {

using Hidden = LitLook::Hidden;

RayStart start_at(const Point& p, float skip)
{
    return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z()), skip};
}

/// Whatever faces the eye on one side of an edge alone lies on the outline.
std::vector<LitLattice::Index> outline_corners(const LitLook& look)
{
    const LitLattice& lattice = look.lattice();
    std::vector<int> facing(lattice.edges().size());
    for (const LitLattice::Cell& cell : lattice.cells())
        for (const LitLattice::Index e : cell.edges)
            facing[e] += look.faces(cell) ? 1 : 0;
    std::vector<LitLattice::Index> corners;
    for (std::size_t e = 0; e < facing.size(); ++e)
        if (facing[e] == 1)
            corners.insert(corners.end(), lattice.edges()[e].ends.begin(),
                           lattice.edges()[e].ends.end());
    std::sort(corners.begin(), corners.end());
    corners.erase(std::unique(corners.begin(), corners.end()), corners.end());
    return corners;
}

/// What is asked of one direction: who stands in the way, and how far that may move.
struct Beside {
    const Hidden& hidden; ///< of the lattice's corners
    const Caster& obstacles;
    Length reach;
};

Patch square_around(const Point2& centre, double half)
{
    return {centre + Point2(-half, -half), centre + Point2(half, -half),
            centre + Point2(half, half), centre + Point2(-half, half)};
}

/// Where, beside the lit face, it is otherwise than at its outline: from there a rim may come in.
/// Rings of points are asked around each corner of the outline, a pitch apart.
void add_patches_beside(const LitLook& look, const Beside& beside, std::vector<Patch>& patches)
{
    constexpr int ways = 12;
    const ViewPlane plane(look.toward());
    const double pitch = in_mm(look.lattice().pitch());
    const int rings = static_cast<int>(std::ceil(in_mm(beside.reach) / pitch));
    std::vector<Point> asked;
    std::vector<RayStart> starts;
    Hidden expected;
    for (const LitLattice::Index v : outline_corners(look))
        for (int i = 0; i < rings * ways; ++i) {
            const Angle angle = degrees(360.0 / ways * (i % ways));
            const Vector off = cos(angle) * plane.across + sin(angle) * plane.up;
            const int ring = 1 + i / ways;
            asked.emplace_back(look.lattice().vertices()[v] + ring * pitch * off);
            starts.push_back(start_at(asked.back(), std::max(0.0F, look.skip(v))));
            expected.push_back(beside.hidden[v]);
        }
    const Hidden found = beside.obstacles.occluded(look.toward(), starts);
    for (std::size_t i = 0; i < found.size(); ++i)
        if (found[i] != expected[i])
            patches.push_back(square_around(plane.project(asked[i]), pitch));
}

/// Corners before or behind which something stands so near that it may change sides.
Hidden touched_corners(const LitLook& look, const Caster& strangers, Length reach)
{
    LitLook::FrontCorners corners = look.front_corners();
    const Eigen::Vector3f d = look.toward().vector().cast<float>();
    const auto back = static_cast<float>(in_mm(reach));
    for (RayStart& start : corners.starts) {
        const float by = start.skip - back;
        start = {start.x + by * d.x(), start.y + by * d.y(), start.z + by * d.z(), 0};
    }
    const Hidden answers = strangers.occluded(look.toward(), corners.starts, 2 * reach);
    Hidden touched(look.lattice().vertices().size());
    for (std::size_t i = 0; i < answers.size(); ++i)
        touched[corners.vertices[i]] = answers[i];
    return touched;
}

/// Cells across which a rim runs, or that are touched; rims keep within them.
void add_cells(const LitLook& look, const Hidden& hidden, const Hidden& touched,
               std::vector<Patch>& patches)
{
    const ViewPlane plane(look.toward());
    for (const LitLattice::Cell& cell : look.lattice().cells()) {
        const auto [a, b, c] = cell.corners;
        const bool alike = hidden[a] == hidden[b] && hidden[b] == hidden[c];
        if (!look.faces(cell) || (alike && (touched[a] | touched[b] | touched[c]) == 0))
            continue;
        const auto at = [&](LitLattice::Index v) {
            return plane.project(look.lattice().vertices()[v]);
        };
        patches.push_back({at(a), at(b), at(c), at(c)});
    }
}

/// How far, as the eye sees it, the nearest of some patches is, each way.
class Neighbourhood {
public:
    explicit Neighbourhood(const std::vector<Patch>& patches)
        : patches_(patches), tree_(boxes_of(patches))
    {
    }

    /// mm; infinity where it is farther than `reach`.
    PerSector<float> nearest(const Point2& p, Length reach) const
    {
        PerSector<float> nearest;
        nearest.fill(std::numeric_limits<float>::infinity());
        double squared = in_mm(reach) * in_mm(reach);
        tree_.visit(BoxTree<2>::BoxAround(p), squared, [&](std::size_t i) {
            const PatchSeen seen = seen_from(p, patches_[i]);
            if (seen.distance_mm * seen.distance_mm > squared)
                return;
            const auto far = static_cast<float>(seen.distance_mm);
            for (std::size_t s = 0; s < nearest.size(); ++s)
                if ((seen.ways >> s & 1U) != 0)
                    nearest[s] = std::min(nearest[s], far);
            const double farthest = *std::max_element(nearest.begin(), nearest.end());
            squared = std::min(squared, farthest * farthest);
        });
        return nearest;
    }

private:
    static std::vector<BoxTree<2>::BoxAround> boxes_of(const std::vector<Patch>& patches)
    {
        std::vector<BoxTree<2>::BoxAround> boxes(patches.size());
        for (std::size_t i = 0; i < patches.size(); ++i)
            for (const Point2& corner : patches[i])
                boxes[i].extend(corner);
        return boxes;
    }

    const std::vector<Patch>& patches_;
    BoxTree<2> tree_;
};

} // namespace

std::vector<PerSector<float>> corner_doubts(const LitLook& fine, const Flock& flock,
                                            const LitLook& coarse)
{
    const Hidden hidden = fine.hidden_by(flock.caster);
    const Hidden touched = flock.with_lit_face ? Hidden(hidden.size())
                                               : touched_corners(fine, flock.caster, flock.reach);
    std::vector<Patch> doubtful;
    add_cells(fine, hidden, touched, doubtful);
    add_patches_beside(fine, {hidden, flock.caster, flock.reach}, doubtful);
    const Neighbourhood near(doubtful);
    const ViewPlane plane(fine.toward());
    const std::vector<Point>& corners = coarse.lattice().vertices();
    std::vector<PerSector<float>> doubts(corners.size());
    for (LitLattice::Index v = 0; v < corners.size(); ++v)
        if (coarse.skip(v) >= 0)
            doubts[v] = near.nearest(plane.project(corners[v]), flock.reach);
    return doubts;
}

} // namespace glim
