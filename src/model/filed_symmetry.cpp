#include "model/filed_symmetry.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// A plane of the whole: a filed one, or what lies between two.
struct Plane {
    Angle at;
    std::size_t filed_as;
    std::size_t other = filed_as;
    double share = 0; ///< of the way to the other
};

constexpr Angle half_turn = degrees(180);
constexpr Angle whole_turn = degrees(360);

Angle within_turn(Angle c)
{
    const Angle rest = degrees(std::fmod(in_degrees(c), 360.0));
    return rest < degrees(0) ? rest + whole_turn : rest;
}

/// The angles at which a filed plane C stands, its own first.
std::vector<Angle> images(Angle c, FiledSymmetry symmetry)
{
    switch (symmetry) {
    case FiledSymmetry::plane_c0_c180:
        return {c, -c};
    case FiledSymmetry::plane_c90_c270:
        return {c, half_turn - c};
    case FiledSymmetry::both_planes:
        return {c, -c, half_turn - c, half_turn + c};
    case FiledSymmetry::vertical_plane:
    case FiledSymmetry::about_pole:
    case FiledSymmetry::none:
        break;
    }
    return {c};
}

/// Ascending, each angle once; of several planes at one angle the one filed there stays.
std::vector<Plane> in_order(std::vector<Plane> planes)
{
    std::stable_sort(planes.begin(), planes.end(),
                     [](const Plane& a, const Plane& b) { return a.at < b.at; });
    const auto same = [](const Plane& a, const Plane& b) { return a.at == b.at; };
    planes.erase(std::unique(planes.begin(), planes.end(), same), planes.end());
    return planes;
}

/// The plane C 0 where none is filed: between the last of the turn and the first of the next.
Plane seam(const std::vector<Plane>& planes)
{
    const Plane& before = planes.back();
    const Plane& after = planes.front();
    const Angle gap = after.at + whole_turn - before.at;
    return {degrees(0), before.filed_as, after.filed_as, (whole_turn - before.at) / gap};
}

std::vector<Plane> round_the_pole(const std::vector<Angle>& filed, FiledSymmetry symmetry)
{
    std::vector<Plane> planes;
    std::size_t closing = 0;
    for (std::size_t p = 0; p < filed.size(); ++p)
        if (filed[p] == whole_turn)
            closing = p;
        else
            planes.push_back({within_turn(filed[p]), p});
    const std::size_t own = planes.size();
    for (std::size_t p = 0; p < own; ++p)
        for (const Angle image : images(filed[planes[p].filed_as], symmetry))
            planes.push_back({within_turn(image), planes[p].filed_as});
    planes = in_order(std::move(planes));
    if (planes.front().at != degrees(0))
        planes.insert(planes.begin(), seam(planes));
    planes.push_back(planes.front());
    planes.back().at = whole_turn;
    if (closing > 0)
        planes.back() = {whole_turn, closing};
    return planes;
}

std::vector<Plane> about_vertical_plane(const std::vector<Angle>& filed, bool mirrored)
{
    std::vector<Plane> planes;
    for (std::size_t p = 0; p < filed.size(); ++p) {
        planes.push_back({filed[p], p});
        if (mirrored && filed[p] != degrees(0))
            planes.push_back({-filed[p], p});
    }
    return in_order(std::move(planes));
}

Intensity between(const IntensityGrid& filed, const Plane& plane, std::size_t v)
{
    const Intensity here = filed.at(plane.filed_as, v);
    // Not by a share of 0: a copy stays a copy to the last bit.
    return plane.filed_as == plane.other ? here
                                         : here + plane.share * (filed.at(plane.other, v) - here);
}

} // namespace

IntensityGrid expanded(const IntensityGrid& filed, FiledSymmetry symmetry)
{
    const std::vector<Plane> planes =
        filed.goniometer == Goniometer::c
            ? round_the_pole(filed.horizontal, symmetry)
            : about_vertical_plane(filed.horizontal, symmetry == FiledSymmetry::vertical_plane);
    IntensityGrid whole{filed.goniometer, {}, filed.vertical, {}};
    whole.candela.reserve(planes.size() * filed.vertical.size());
    for (const Plane& plane : planes) {
        whole.horizontal.push_back(plane.at);
        for (std::size_t v = 0; v < filed.vertical.size(); ++v)
            whole.candela.push_back(between(filed, plane, v));
    }
    return whole;
}

} // namespace glim
