#include "model/flux.h"

#include "units/trig.h"

#include <array>
#include <cmath>

namespace glim {

namespace {

/// A parabola over two gaps swings if one of them is far longer than the other: beyond this ratio
/// it is not used.
constexpr double most_uneven = 2;

struct GaussPoint {
    double share; ///< of the gap
    double weight;
};
// Gauss-Legendre with three points on 0 to 1: exact up to the fifth power.
constexpr std::array gauss_points = {GaussPoint{0.1127016653792583, 5.0 / 18},
                                     GaussPoint{0.5, 8.0 / 18},
                                     GaussPoint{0.8872983346207417, 5.0 / 18}};

/// What the values at both ends of a gap count in the integral of value x metric over it, and what
/// their bend counts: the values run as a line plus bend x (distance to one end) x (to the other).
struct GapWeights {
    double lower = 0;
    double upper = 0;
    double bend = 0;
};

/// Integrates values given at the angles of an axis, times the axis's metric.
class AxisRule {
public:
    AxisRule(const std::vector<Angle>& angles, double (*metric)(Angle))
    {
        for (std::size_t i = 0; i + 1 < angles.size(); ++i) {
            lengths_.push_back(in_radians(angles[i + 1] - angles[i]));
            gaps_.push_back(weights(angles[i], angles[i + 1], metric));
        }
    }

    /// One value for each angle.
    double integral(const std::vector<double>& values) const
    {
        double sum = 0;
        double before = 0;
        for (std::size_t i = 0; i < gaps_.size(); ++i) {
            const bool has_after = i + 1 < gaps_.size();
            const double after = has_after ? bend(values, i) : before;
            const double least = i == 0 || std::abs(after) < std::abs(before) ? after : before;
            sum +=
                gaps_[i].lower * values[i] + gaps_[i].upper * values[i + 1] + gaps_[i].bend * least;
            before = after;
        }
        return sum;
    }

private:
    static GapWeights weights(Angle from, Angle to, double (*metric)(Angle))
    {
        const double length = in_radians(to - from);
        GapWeights sum;
        for (const GaussPoint& point : gauss_points) {
            const double part = point.weight * length * metric(from + point.share * (to - from));
            sum.lower += part * (1 - point.share);
            sum.upper += part * point.share;
            sum.bend -= part * point.share * (1 - point.share) * length * length;
        }
        return sum;
    }

    /// Half the second derivative of the parabola over gap `i` and the next.
    double bend(const std::vector<double>& values, std::size_t i) const
    {
        const double ratio = lengths_[i] / lengths_[i + 1];
        if (ratio > most_uneven || ratio < 1 / most_uneven)
            return 0;
        const double slope = (values[i + 1] - values[i]) / lengths_[i];
        const double next = (values[i + 2] - values[i + 1]) / lengths_[i + 1];
        return (next - slope) / (lengths_[i] + lengths_[i + 1]);
    }

    std::vector<double> lengths_;
    std::vector<GapWeights> gaps_;
};

double flat(Angle) { return 1; }
double cosine(Angle a) { return cos(a); }
double sine(Angle a) { return sin(a); }

} // namespace

LuminousFlux flux_of(const IntensityGrid& grid)
{
    const bool about_y = grid.goniometer == Goniometer::b;
    const auto from_pole = grid.goniometer == Goniometer::c ? sine : cosine;
    const AxisRule over_h(grid.horizontal, about_y ? cosine : flat);
    const AxisRule over_v(grid.vertical, about_y ? flat : from_pole);
    std::vector<double> planes;
    std::vector<double> plane(grid.vertical.size());
    for (std::size_t h = 0; h < grid.horizontal.size(); ++h) {
        for (std::size_t v = 0; v < plane.size(); ++v)
            plane[v] = in_candelas(grid.at(h, v));
        planes.push_back(over_v.integral(plane));
    }
    return candelas(over_h.integral(planes)) * steradians(1);
}

} // namespace glim
