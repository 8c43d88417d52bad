#include "visibility/flock.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Rounding of places some metres away, and less than any ray can tell.
constexpr double no_move_mm = 1e-9;

/// An interval each of the axes across, up and toward.
struct Stretch {
    Vector least, most;
};

Stretch stretch_of(const Box& box, const ViewPlane& plane)
{
    Eigen::Matrix3d axes;
    axes << plane.across.transpose(), plane.up.transpose(), plane.toward.vector().transpose();
    const Vector centre = axes * box.centre();
    const Vector half = axes.cwiseAbs() * box.size() / 2;
    return {centre - half, centre + half};
}

RayStart carried_to(const Placement& frame, const RayStart& start)
{
    const Point p = frame(Point(start.x, start.y, start.z));
    return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z()),
            start.skip};
}

} // namespace

/// The norm of a rotation minus one is 2 sin(angle / 2), and its Frobenius norm root 2 of that.
Straying::Straying(const Placement& to)
    : moved(to),
      turned((to.matrix().linear() - Eigen::Matrix3d::Identity()).norm() / std::sqrt(2.0))
{
}

std::vector<std::uint32_t> bodies_before(const Box& around, const Flock& flock,
                                         const Direction& toward)
{
    const ViewPlane plane(toward);
    const Vector reach = Vector::Constant(in_mm(flock.reach));
    Stretch tube = stretch_of(around, plane);
    tube.least -= reach;
    tube.most += reach;
    tube.most.z() = std::numeric_limits<double>::infinity();
    std::vector<std::uint32_t> before;
    for (std::uint32_t i = 0; i < flock.boxes.size(); ++i) {
        if (flock.boxes[i].empty())
            continue;
        const Stretch body = stretch_of(flock.boxes[i], plane);
        if ((body.most.array() >= tube.least.array()).all() &&
            (body.least.array() <= tube.most.array()).all())
            before.push_back(i);
    }
    return before;
}

// A point q of a body and a point p of the lit face are seen apart by (q - p), across the view; in
// the build by that and (move of q) - (move of p). Moves of points differ from those of the boxes'
// centres by as much as the bodies turn.
Drift drift_toward(const ViewPlane& toward, const FlockBefore& before, const Box& lit,
                   const StrayedBodies& strayed, const StrayedFlock& flock)
{
    const auto half = [](const Box& box) { return box.size().norm() / 2; };
    const Point face = lit.centre();
    const Vector face_move = strayed.lit.moved(face) - face;
    const double widened = in_mm(flock.widened) + strayed.lit.turned * half(lit);
    double most = 0;
    Drift drift;
    for (std::size_t i = 0; i < before.bodies.size(); ++i) {
        const Straying& body = flock.bodies[before.bodies[i]].straying;
        const Point centre = before.boxes[i].centre();
        const Vector apart = body.moved(centre) - centre - face_move;
        const Point2 way = toward.project(apart);
        const double unsure = widened + body.turned * half(before.boxes[i]);
        most = std::max(most, way.norm() + unsure);
        drift.strays = drift.strays || apart.norm() + unsure > no_move_mm;
        drift.behind |= ways_into_circle(-way, unsure);
    }
    drift.reach = std::min(before.reach, millimetres(most));
    return drift;
}

std::vector<std::uint8_t> occluded_by(const FlockBefore& before, const StrayedFlock& flock,
                                      const Direction& toward, std::span<const RayStart> starts)
{
    std::vector<std::uint8_t> hidden(starts.size());
    std::vector<RayStart> asked;
    std::vector<std::uint32_t> who;
    for (const std::uint32_t b : before.bodies) {
        const StrayedBody& body = flock.bodies[b];
        asked.clear();
        who.clear();
        for (std::uint32_t i = 0; i < starts.size(); ++i) {
            if (hidden[i] != 0)
                continue;
            asked.push_back(carried_to(body.part_from_lit, starts[i]));
            who.push_back(i);
        }
        if (who.empty())
            break;
        const std::vector<std::uint8_t> stopped =
            body.part->occluded(body.part_from_lit(toward), asked);
        for (std::size_t i = 0; i < who.size(); ++i)
            hidden[who[i]] = stopped[i];
    }
    return hidden;
}

} // namespace glim
