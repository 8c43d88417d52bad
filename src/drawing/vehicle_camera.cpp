#include "drawing/vehicle_camera.h"

#include <algorithm>

namespace glim {

namespace {

/// A picture is at least so wide, that the corner can be made out, and at most so wide, however far
/// off something hides the lamp.
constexpr double least_width_mm = 1200, most_width_mm = 3000;

/// What must be seen fills at most this share of the picture's width or height.
constexpr double share_of_subject = 0.6;

/// Another side must show so much more than the one preferred.
constexpr double worth_turning = 1.15;

/// Off the surface, so that rounding does not hide a place behind itself.
constexpr float skip_mm = 0.5F;

/// A place that ought to be seen, and how much it counts.
struct Wanted {
    Point at;      ///< scene frame
    Vector normal; ///< zero: seen from both sides
    double weight;
};

std::vector<Wanted> lit_places(const CornerSubject& subject, const Point& origin)
{
    std::vector<Wanted> wanted;
    for (const TriangleMesh& lit : subject.lit)
        for (std::size_t f = 0; f < lit.facets.size(); ++f) {
            const Vector area = area_vector(lit, f);
            if (area.norm() > 0)
                wanted.push_back(
                    {(lit.corner(f, 0) + lit.corner(f, 1) + lit.corner(f, 2)) / 3 - origin,
                     area.normalized(), area.norm()});
        }
    return wanted;
}

std::vector<Wanted> blocking_places(const CornerSubject& subject, const Point& origin)
{
    std::vector<Wanted> wanted;
    for (const BlockingSurface& s : subject.blocking)
        for (std::size_t f = 0; f < s.taken.size(); ++f)
            if (s.taken[f] > Area())
                wanted.push_back(
                    {(s.mesh.corner(f, 0) + s.mesh.corner(f, 1) + s.mesh.corner(f, 2)) / 3 - origin,
                     Vector::Zero(), in_mm2(s.taken[f])});
    return wanted;
}

/// The share of the wanted places that an eye there sees, slanted ones counting less; 1 if nothing
/// is wanted.
double share_seen(const std::vector<Wanted>& wanted, const Caster& caster, const Direction& eye)
{
    std::vector<RayStart> starts;
    starts.reserve(wanted.size());
    for (const Wanted& w : wanted)
        starts.push_back({static_cast<float>(w.at.x()), static_cast<float>(w.at.y()),
                          static_cast<float>(w.at.z()), skip_mm});
    const std::vector<std::uint8_t> hidden = caster.occluded(eye, starts);
    double seen = 0, all = 0;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const double facing =
            wanted[i].normal.isZero() ? 1 : std::max(0.0, eye.dot(wanted[i].normal));
        all += wanted[i].weight;
        seen += hidden[i] != 0 ? 0 : facing * wanted[i].weight;
    }
    return all > 0 ? seen / all : 1;
}

/// Three-quarter views, the preferred one first.
std::vector<Direction> candidates(const LampLook& look, const Vehicle& vehicle)
{
    const bool at_rear = look.axis == ReferenceAxis::rearward;
    const LampFrame axes{at_rear ? -vehicle.forward : vehicle.forward, vehicle.outboard(look.side),
                         vehicle.up};
    std::vector<Direction> all;
    for (const double v : {18.0, 35.0, 8.0})
        for (const double h : {35.0, -35.0, 55.0, -55.0, 15.0, -15.0, 75.0})
            all.push_back(direction_of({degrees(h), degrees(v)}, axes));
    return all;
}

Direction best_side(const CornerSubject& subject, const Vehicle& vehicle, const Caster& caster,
                    const Point& origin)
{
    const std::vector<Wanted> lit = lit_places(subject, origin);
    const std::vector<Wanted> blocking = blocking_places(subject, origin);
    const std::vector<Direction> all = candidates(subject.look, vehicle);
    Direction best = all.front();
    double most = 0;
    for (const Direction& eye : all) {
        const double shown = share_seen(lit, caster, eye) * share_seen(blocking, caster, eye);
        if (shown > most * worth_turning) {
            most = shown;
            best = eye;
        }
    }
    return best;
}

/// About all that must be in the picture, in the frame's axes.
Box subject_box(const CornerSubject& subject, const PictureFrame& frame)
{
    Box box;
    const auto add = [&](const Point& p) {
        box.add({frame.across.dot(p), frame.up.dot(p), frame.toward.dot(p)});
    };
    for (const TriangleMesh& lit : subject.lit)
        for (const Point& p : lit.points)
            add(p);
    for (const BlockingSurface& s : subject.blocking)
        for (std::size_t f = 0; f < s.taken.size(); ++f)
            if (s.taken[f] > Area())
                for (int i = 0; i < 3; ++i)
                    add(s.mesh.corner(f, i));
    if (subject.line && subject.line->meets)
        add(*subject.line->meets);
    return box;
}

} // namespace

PictureFrame corner_frame(const CornerSubject& subject, const Vehicle& vehicle,
                          const Caster& caster, const Point& origin, const PixelSize& size)
{
    PictureFrame frame =
        picture_frame(best_side(subject, vehicle, caster, origin), vehicle.up, vehicle.forward);
    frame.width = size.width;
    frame.height = size.height;
    const Box box = subject_box(subject, frame);
    const Point centre = box.centre();
    frame.centre =
        centre.x() * frame.across + centre.y() * frame.up + centre.z() * frame.toward.vector();
    const double wanted_mm = std::max(box.size().x(), box.size().y() * size.width / size.height);
    frame.pixel = millimetres(
        std::clamp(wanted_mm / share_of_subject, least_width_mm, most_width_mm) / size.width);
    return frame;
}

} // namespace glim
