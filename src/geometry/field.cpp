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
