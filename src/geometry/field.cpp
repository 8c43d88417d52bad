#include "geometry/field.h"

#include "units/trig.h"

#include <algorithm>

namespace glim {

bool FieldRectangle::holds(const Bearing& b) const
{
    return h_least <= b.h && b.h <= h_most && v_least <= b.v && b.v <= v_most;
}

bool Field::holds(const Bearing& b) const
{
    return std::any_of(rectangles.begin(), rectangles.end(),
                       [&](const FieldRectangle& r) { return r.holds(b); });
}

namespace {

bool has_area(const FieldRectangle& r) { return r.h_least < r.h_most && r.v_least < r.v_most; }

/// Far below what any field is given to.
constexpr Angle beside = degrees(1e-6);

/// Whether the outline of rectangles with area turns there: of the four quarters around it the
/// field has one, three, or two that only touch.
bool turns_at(const Bearing& b, const std::vector<FieldRectangle>& rectangles)
{
    const auto holds = [&](double right, double up) {
        const Bearing quarter{b.h + right * beside, b.v + up * beside};
        return std::any_of(rectangles.begin(), rectangles.end(),
                           [&](const FieldRectangle& r) { return r.holds(quarter); });
    };
    const bool a = holds(1, 1), c = holds(-1, 1), d = holds(-1, -1), e = holds(1, -1);
    const int count = int{a} + int{c} + int{d} + int{e};
    return count % 2 == 1 || (count == 2 && a == d);
}

} // namespace

std::vector<Bearing> corners_of(const Field& field)
{
    std::vector<FieldRectangle> broad;
    std::vector<Bearing> corners;
    for (const FieldRectangle& r : field.rectangles)
        if (has_area(r))
            broad.push_back(r);
        else
            corners.insert(corners.end(), {{r.h_least, r.v_least}, {r.h_most, r.v_most}});
    for (const FieldRectangle& a : broad)
        for (const FieldRectangle& b : broad)
            for (const Angle h : {a.h_least, a.h_most})
                for (const Angle v : {b.v_least, b.v_most})
                    if (turns_at({h, v}, broad))
                        corners.push_back({h, v});
    const auto by_v_then_h = [](const Bearing& a, const Bearing& b) {
        return std::pair(a.v, a.h) < std::pair(b.v, b.h);
    };
    std::sort(corners.begin(), corners.end(), by_v_then_h);
    corners.erase(std::unique(corners.begin(), corners.end()), corners.end());
    return corners;
}

SolidAngle solid_angle(const FieldRectangle& r)
{
    return steradians(in_radians(r.h_most - r.h_least) * (sin(r.v_most) - sin(r.v_least)));
}

SolidAngle solid_angle(const Field& field)
{
    // Cut along every edge; a cell of that grid lies in a rectangle wholly or not at all.
    std::vector<Angle> hs, vs;
    for (const FieldRectangle& r : field.rectangles) {
        hs.insert(hs.end(), {r.h_least, r.h_most});
        vs.insert(vs.end(), {r.v_least, r.v_most});
    }
    std::sort(hs.begin(), hs.end());
    std::sort(vs.begin(), vs.end());
    SolidAngle sum;
    for (std::size_t i = 0; i + 1 < hs.size(); ++i)
        for (std::size_t j = 0; j + 1 < vs.size(); ++j)
            if (field.holds({(hs[i] + hs[i + 1]) / 2, (vs[j] + vs[j + 1]) / 2}))
                sum += solid_angle(FieldRectangle{hs[i], hs[i + 1], vs[j], vs[j + 1]});
    return sum;
}

} // namespace glim
