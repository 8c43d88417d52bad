#include "input/plausibility.h"

#include "units/trig.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// From a lamp with its surroundings to a long lorry; beyond that a unit is probably wrong.
constexpr Length shortest_body = millimetres(300);
constexpr Length longest_body = millimetres(20000);
/// A model shorter than this may show one end of the vehicle only, and has no middle to speak of.
constexpr Length shortest_whole_vehicle = millimetres(2500);
/// Stray points below the wheels must not hide that the ground is wrong.
constexpr double strays = 0.01;
/// A reference axis is level within 3 degrees (UN R48, from a second-hand summary).
constexpr Angle axis_tilt = degrees(3);

/// A half may end a little beyond the median plane; what reaches further over it is drawn whole.
constexpr Length half_overlap = millimetres(5);

std::vector<Point> points_of(const Study& study)
{
    std::vector<Point> points;
    for (const Surface& surface : study.surfaces)
        if (surface.role != Role::ignored)
            points.insert(points.end(), surface.mesh.points.begin(), surface.mesh.points.end());
    return points;
}

struct Stretch {
    Length least, most;
    Length length() const { return most - least; }
    Length middle() const { return (least + most) / 2; }
};

Length ahead(const Study& study, const Point& p)
{
    return millimetres(study.vehicle.forward.dot(p));
}

Stretch stretch_of(const Study& study, const std::vector<Point>& points)
{
    Stretch s{ahead(study, points.front()), ahead(study, points.front())};
    for (const Point& p : points)
        s = {std::min(s.least, ahead(study, p)), std::max(s.most, ahead(study, p))};
    return s;
}

/// "41 mm", "42.0 m"
std::string length_words(Length length)
{
    if (length < millimetres(1000))
        return std::to_string(std::lround(in_mm(length))) + " mm";
    const long tenths = std::lround(in_mm(length) / 100);
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " m";
}

std::optional<Warning> doubt_length(const Stretch& body, const Place& place)
{
    if (body.length() >= shortest_body && body.length() <= longest_body)
        return std::nullopt;
    return Warning{place, "the model is " + length_words(body.length()) + " long: is that so?",
                   "if not, correct `unit`, `up` or `forward` of a [[mesh]]"};
}

std::optional<Warning> doubt_ground(const GroundState& state, const std::vector<Point>& points,
                                    const Place& place)
{
    std::vector<double> heights;
    heights.reserve(points.size());
    for (const Point& p : points)
        heights.push_back(in_mm(state.ground.height_of(p)));
    const auto low = heights.begin() + static_cast<std::ptrdiff_t>(strays * heights.size());
    std::nth_element(heights.begin(), low, heights.end());
    if (*low >= 0)
        return std::nullopt;
    return Warning{place,
                   "part of the model lies below the ground (" + state.state + "), down to " +
                       std::to_string(std::lround(-*low)) + " mm: is that so?",
                   "if not, correct [ground." + state.state +
                       "], or `up` of [vehicle] or of a [[mesh]]"};
}

/// Nothing else would tell that a whole bonnet is given a twin on top of itself.
std::optional<Warning> doubt_twin(const Study& study, const Surface& surface, const Place& place)
{
    if (surface.mirror != MirrorRule::yes || surface.role == Role::ignored || surface.lit_part_of)
        return std::nullopt;
    Length left, right;
    for (const Point& p : surface.mesh.points) {
        left = std::max(left, study.vehicle.lateral(p));
        right = std::max(right, -study.vehicle.lateral(p));
    }
    const Length over = std::min(left, right);
    if (over <= half_overlap)
        return std::nullopt;
    return Warning{place,
                   "surface `" + surface.name + "` has a twin, but reaches " +
                       std::to_string(std::lround(in_mm(over))) +
                       " mm over the median plane: is it drawn whole?",
                   "if so, write mirror = \"straddles\" for it, or correct `median` of [vehicle]"};
}

/// 1 for lamps at the front, -1 at the rear, 0 where the function does not tell.
int end_of(LampFunction function)
{
    switch (function) {
    case LampFunction::front_indicator:
    case LampFunction::front_position:
    case LampFunction::daytime_running:
    case LampFunction::front_fog:
    case LampFunction::cornering:
    case LampFunction::dipped_beam:
    case LampFunction::main_beam:
        return 1;
    case LampFunction::rear_indicator:
    case LampFunction::rear_position:
    case LampFunction::stop:
    case LampFunction::high_stop:
    case LampFunction::rear_fog:
    case LampFunction::reversing:
        return -1;
    default:
        return 0;
    }
}

std::optional<Warning> doubt_end(const Study& study, const Lamp& lamp, const Stretch& body,
                                 const Place& place)
{
    Box lit;
    for (const SurfaceId id : lamp.emits)
        for (const Point& p : study.surfaces[id].mesh.points)
            lit.add(p);
    const int end = end_of(lamp.function);
    const Length past_middle = ahead(study, lit.centre()) - body.middle();
    if (end == 0 || body.length() < shortest_whole_vehicle || end * past_middle >= millimetres(0))
        return std::nullopt;
    return Warning{place,
                   "lamp `" + lamp.name + "` is a " + (end > 0 ? "front" : "rear") +
                       " lamp, but lies in the " + (end > 0 ? "rear" : "front") +
                       " half of the model: is that so?",
                   "if not, correct its function, or `forward` of [vehicle] or of the [[mesh]]"};
}

std::optional<Warning> doubt_axis(const Study& study, const Lamp& lamp, const Place& place)
{
    if (!lamp.axis)
        return std::nullopt;
    Angle tilt;
    for (const GroundState& state : study.grounds) {
        const Angle here = arc_sine(std::abs(lamp.axis->dot(state.ground.up)));
        tilt = std::max(tilt, here);
    }
    if (tilt <= axis_tilt)
        return std::nullopt;
    return Warning{
        place,
        "the axis of lamp `" + lamp.name + "` is tilted by " +
            std::to_string(std::lround(in_degrees(tilt))) +
            " degrees against the ground; angles are counted from its level part",
        "a reference axis is level within 3 degrees; correct `axis` if it is not meant so"};
}

} // namespace

std::vector<Warning> doubts_about(const Study& study, const Place& place)
{
    const std::vector<Point> points = points_of(study);
    std::vector<Warning> doubts;
    const auto note = [&](const std::optional<Warning>& doubt) {
        if (doubt)
            doubts.push_back(*doubt);
    };
    if (points.empty())
        return doubts;
    const Stretch body = stretch_of(study, points);
    note(doubt_length(body, place));
    for (const GroundState& state : study.grounds)
        note(doubt_ground(state, points, place));
    for (const Surface& surface : study.surfaces)
        note(doubt_twin(study, surface, place));
    for (const Lamp& lamp : study.lamps) {
        note(doubt_end(study, lamp, body, place));
        note(doubt_axis(study, lamp, place));
    }
    return doubts;
}

} // namespace glim
