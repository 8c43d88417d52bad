#include "drawing/subject_eye.h"

#include <algorithm>

namespace glim {

namespace {

/// Off the surface, so that rounding does not hide a place behind itself.
constexpr float skip_mm = 0.5F;
/// So many patches are enough to choose the eye by.
constexpr std::size_t most_probes = 4000;

/// How much of the subject an eye there sees, by area as seen.
double seen_mm2(const std::vector<SubjectPatch>& subject, const Caster& caster, const Point& origin,
                const Direction& eye)
{
    const std::size_t stride = subject.size() / most_probes + 1;
    std::vector<RayStart> starts;
    std::vector<double> areas;
    for (std::size_t i = 0; i < subject.size(); i += stride) {
        const Point p = subject[i].centre - origin;
        starts.push_back({static_cast<float>(p.x()), static_cast<float>(p.y()),
                          static_cast<float>(p.z()), skip_mm});
        areas.push_back(in_mm2(subject[i].size) * std::max(0.0, eye.dot(subject[i].normal)));
    }
    const std::vector<std::uint8_t> hidden = caster.occluded(eye, starts);
    double seen = 0;
    for (std::size_t i = 0; i < areas.size(); ++i)
        seen += hidden[i] != 0 ? 0 : areas[i];
    return seen;
}

} // namespace

Direction eye_on(const std::vector<SubjectPatch>& subject, const Caster& caster,
                 const Point& origin, const LampFrame& axes)
{
    Direction best = axes.forward;
    double most = -1;
    for (const double v : {18.0, 35.0})
        for (const double h : {35.0, 55.0, 15.0, 80.0, -35.0, 110.0, 145.0, 180.0}) {
            const Direction eye = direction_of({degrees(h), degrees(v)}, axes);
            const double seen = seen_mm2(subject, caster, origin, eye);
            // The one before stays unless another shows clearly more.
            if (seen > most * 1.1) {
                most = seen;
                best = eye;
            }
        }
    return best;
}

} // namespace glim
