#include "judgement/build_moves.h"

#include "geometry/normal_offset.h"
#include "units/trig.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr auto profile = ToleranceWay::profile;

bool moves_rigidly(const Tolerance& tolerance)
{
    return std::any_of(tolerance_way_words.begin(), tolerance_way_words.end(),
                       [&](const auto& w) { return w.way != profile && tolerance[w.way] > 0; });
}

double of(const std::array<double, tolerance_way_count>& by, ToleranceWay way)
{
    return by[static_cast<std::size_t>(way)];
}

/// Of all three turns together.
Angle turn_of(const std::array<double, tolerance_way_count>& by)
{
    return degrees(of(by, ToleranceWay::turn) + of(by, ToleranceWay::tilt) +
                   of(by, ToleranceWay::roll));
}

/// The corner of a box that lies farthest from a point.
double farthest_mm(const Box& box, const Point& from)
{
    const Vector most = (box.most - from).cwiseAbs().cwiseMax((box.least - from).cwiseAbs());
    return most.norm();
}

double farthest_apart_mm(const Box& a, const Box& b)
{
    return (a.most.cwiseMax(b.most) - a.least.cwiseMin(b.least)).norm();
}

} // namespace

BuildMoves::BuildMoves(const Study& study, std::vector<BuildFactor> factors)
    : study_(study), factors_(std::move(factors)), movers_(study.surfaces.size()),
      offsets_(study.surfaces.size()), boxes_(study.surfaces.size())
{
    for (const SurfaceId s : study.surfaces.ids())
        boxes_[s] = box_of(study.surfaces[s].mesh);
    const std::vector<Tolerance>& all = study.variation.tolerances;
    for (std::size_t t = 0; t < all.size(); ++t) {
        axes_.push_back(axes_of(all[t]));
        for (const SurfaceId s : all[t].surfaces) {
            if (moves_rigidly(all[t]))
                movers_[s].push_back(t);
            if (all[t][profile] > 0)
                offsets_[s].push_back(t);
        }
    }
    for (std::vector<std::size_t>& movers : movers_)
        std::stable_sort(movers.begin(), movers.end(),
                         [&](std::size_t a, std::size_t b) { return all[a].level < all[b].level; });
}

/// Forward, outboard and up as geometry/bearing.h has them, level: the vehicle's own.
BuildMoves::Axes BuildMoves::axes_of(const Tolerance& tolerance) const
{
    const Vehicle& vehicle = study_.vehicle;
    Box box;
    for (const SurfaceId s : tolerance.surfaces)
        if (!boxes_[s].empty()) {
            box.add(boxes_[s].least);
            box.add(boxes_[s].most);
        }
    const bool on_right = !box.empty() && vehicle.lateral(box.centre()) < -millimetres(1);
    Axes axes;
    axes.forward = vehicle.forward.vector();
    axes.up = vehicle.up.vector();
    axes.outboard = (on_right ? -vehicle.left() : vehicle.left()).vector();
    // A turn about a x b takes a towards b.
    axes.turn = Direction::along(axes.forward.cross(axes.outboard));
    axes.tilt = Direction::along(axes.forward.cross(axes.up));
    axes.roll = Direction::along(axes.outboard.cross(axes.up));
    axes.about = tolerance.about.value_or(Point::Zero());
    return axes;
}

Placement BuildMoves::placement(std::size_t tolerance,
                                const std::array<double, tolerance_way_count>& by) const
{
    const Axes& axes = axes_[tolerance];
    const auto turn = [&](ToleranceWay way, const Direction& axis) {
        const double angle = of(by, way);
        return angle == 0 ? Placement() : Placement::turn(axes.about, axis, degrees(angle));
    };
    return Placement::shift(of(by, ToleranceWay::forward) * axes.forward +
                            of(by, ToleranceWay::outboard) * axes.outboard +
                            of(by, ToleranceWay::up) * axes.up) *
           turn(ToleranceWay::turn, axes.turn) * turn(ToleranceWay::tilt, axes.tilt) *
           turn(ToleranceWay::roll, axes.roll);
}

BuildPlaces BuildMoves::places(std::span<const double> deviations) const
{
    Extents by(axes_.size()); // with their senses
    for (std::size_t f = 0; f < factors_.size(); ++f)
        by[factors_[f].tolerance][static_cast<std::size_t>(factors_[f].way)] = deviations[f];
    std::vector<Placement> moves;
    moves.reserve(by.size());
    for (std::size_t t = 0; t < by.size(); ++t)
        moves.push_back(placement(t, by[t]));
    BuildPlaces places{Slots<SurfaceId, Placement>(study_.surfaces.size()),
                       Slots<SurfaceId, Length>(study_.surfaces.size()), extents_of(deviations)};
    for (const SurfaceId s : study_.surfaces.ids()) {
        for (const std::size_t t : movers_[s])
            places.at[s] = moves[t] * places.at[s];
        for (const std::size_t t : offsets_[s])
            places.offset_by[s] += millimetres(by[t][static_cast<std::size_t>(profile)]);
    }
    return places;
}

bool BuildMoves::has_profile(SurfaceId surface) const { return !offsets_[surface].empty(); }

Extents BuildMoves::widest(std::span<const double> scale) const
{
    Extents extents(axes_.size());
    for (const BuildFactor& f : factors_)
        extents[f.tolerance][static_cast<std::size_t>(f.way)] =
            scale[f.tolerance] * most_deviation(study_.variation.tolerances[f.tolerance], f.way);
    return extents;
}

Extents BuildMoves::extents_of(std::span<const double> deviations) const
{
    Extents extents(axes_.size());
    for (std::size_t f = 0; f < factors_.size(); ++f)
        extents[factors_[f].tolerance][static_cast<std::size_t>(factors_[f].way)] =
            std::abs(deviations[f]);
    return extents;
}

Length BuildMoves::widest_offset(SurfaceId surface, const Extents& extents) const
{
    double sum = 0;
    for (const std::size_t t : offsets_[surface])
        sum += of(extents[t], profile);
    return millimetres(sum);
}

Angle BuildMoves::widest_turn(SurfaceId surface, const Extents& extents) const
{
    Angle sum;
    for (const std::size_t t : movers_[surface])
        sum += turn_of(extents[t]);
    return sum;
}

Length BuildMoves::widest_move(std::size_t tolerance, SurfaceId surface,
                               const Extents& extents) const
{
    const auto& by = extents[tolerance];
    const double shift = std::hypot(of(by, ToleranceWay::forward), of(by, ToleranceWay::outboard),
                                    of(by, ToleranceWay::up));
    const double arm = farthest_mm(boxes_[surface], axes_[tolerance].about);
    return millimetres(shift + in_radians(turn_of(by)) * arm);
}

/// What moves both shifts neither against the other; it turns the line between them. On different
/// sides both move, as mirror images.
Length BuildMoves::reach(const Standing& body, const Standing& lit, const Extents& extents) const
{
    const auto shared = [&](std::size_t t, SurfaceId other) {
        const std::vector<std::size_t>& movers = movers_[other];
        return body.twin == lit.twin && std::find(movers.begin(), movers.end(), t) != movers.end();
    };
    Length sum = most_offset_stretch * widest_offset(body.surface, extents);
    for (const std::size_t t : movers_[body.surface])
        sum += shared(t, lit.surface)
                   ? millimetres(in_radians(turn_of(extents[t])) *
                                 farthest_apart_mm(boxes_[body.surface], boxes_[lit.surface]))
                   : widest_move(t, body.surface, extents);
    for (const std::size_t t : movers_[lit.surface])
        if (!shared(t, body.surface))
            sum += widest_move(t, lit.surface, extents);
    return sum;
}

} // namespace glim
