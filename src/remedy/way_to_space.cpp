#include "remedy/way_to_space.h"

#include <algorithm>
#include <cassert>

namespace glim {

namespace {

constexpr double first_step_mm = 0.25;
constexpr double step_growth = 1.2;
constexpr double depth_grain_mm = 0.005;
/// Beyond 2.5 mm nobody reads the third digit.
constexpr double grain_share = 0.002;

/// Looks along a way, nearest stretches first. Stretches are the halves of halves of the longest
/// way, so that what is found does not depend on how far is looked.
class WayIn {
public:
    WayIn(const Point& from, const Vector& way, const KeepClearSet& set, double within)
        : from_(from), way_(way), set_(set), within_(within)
    {
    }

    template <class Spared>
    std::optional<double> first_in(double least, double most, const Spared& spared) const
    {
        if (least >= within_)
            return std::nullopt;
        const std::array ends = {at(least), at(most)};
        if (!set_.may_meet(ends))
            return std::nullopt;
        if (most - least <= in_mm(way_grain(millimetres(least))))
            return spared(ends[0]) ? std::nullopt : std::optional(least);
        const double middle = (least + most) / 2;
        const std::optional<double> first = first_in(least, middle, spared);
        return first ? first : first_in(middle, most, spared);
    }

private:
    Point at(double distance) const { return from_ + distance * way_; }

    const Point& from_;
    const Vector& way_;
    const KeepClearSet& set_;
    double within_;
};

} // namespace

Length way_grain(Length distance)
{
    return std::max(millimetres(depth_grain_mm), grain_share * distance);
}

Length way_out(const Point& from, const Vector& way, const KeepClearSet& set)
{
    double inside = 0, outside = 0, step = first_step_mm;
    do {
        inside = outside;
        outside += step;
        step *= step_growth;
        if (outside > in_mm(deepest_intrusion))
            return deepest_intrusion;
    } while (set.holds(from + outside * way));
    while (outside - inside > depth_grain_mm) {
        const double middle = (inside + outside) / 2;
        (set.holds(from + middle * way) ? inside : outside) = middle;
    }
    return millimetres(outside);
}

std::optional<Length> way_in(const Point& from, const Vector& way, const KeepClearSet& set,
                             Length within, const std::function<bool(const Point&)>& spared)
{
    assert(within <= farthest_way_in);
    const WayIn search(from, way, set, in_mm(within));
    const std::optional<double> found = search.first_in(0, in_mm(farthest_way_in), spared);
    return found ? std::optional(millimetres(*found)) : std::nullopt;
}

} // namespace glim
