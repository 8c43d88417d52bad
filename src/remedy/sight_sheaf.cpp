#include "remedy/sight_sheaf.h"

#include "remedy/sight_ask.h"
#include "units/trig.h"

#include <cassert>
#include <cmath>

namespace glim {

namespace {

constexpr std::uint32_t facets_a_leaf = 4;

FieldRectangle with_room(FieldRectangle r)
{
    const auto widen = [](Angle& least, Angle& most) {
        const Angle lacking = SightSheaf::least_width - (most - least);
        if (lacking > Angle()) {
            least = least - lacking / 2;
            most = most + lacking / 2;
        }
    };
    widen(r.h_least, r.h_most);
    widen(r.v_least, r.v_most);
    return r;
}

Point2 level_way(Angle h) { return {cos(h), sin(h)}; }

} // namespace

SightSheaf::SightSheaf(const TriangleMesh& part, const FieldRectangle& toward)
    : toward_(with_room(toward)), down_slope_(tan(toward_.v_least)), up_slope_(tan(toward_.v_most))
{
    assert(toward_.h_most - toward_.h_least <= most_width);
    assert(toward_.v_least >= -steepest && toward_.v_most <= steepest);
    const Point2 first = level_way(toward_.h_least);
    const Point2 last = level_way(toward_.h_most);
    inward_ = {Point2(-first.y(), first.x()), Point2(last.y(), -last.x()),
               level_way((toward_.h_least + toward_.h_most) / 2)};
    ways_ = {first, last};
    for (std::size_t f = 0; f < part.facets.size(); ++f) {
        const Vector area = area_vector(part, f);
        if (area.norm() == 0)
            continue;
        const Vector normal = area.normalized();
        if (most_facing(normal) > facing_grain)
            facets_.push_back({{part.corner(f, 0), part.corner(f, 1), part.corner(f, 2)},
                               normal,
                               most_facing(-normal) > facing_grain});
    }
    if (!facets_.empty())
        build(0, static_cast<std::uint32_t>(facets_.size()));
}

/// The largest normal . d over the rectangle: closed form.
double SightSheaf::most_facing(const Vector& normal) const
{
    const double level = normal.head<2>().norm();
    const Angle azimuth = angle_of(normal.y(), normal.x());
    double along = std::max(cos(toward_.h_least - azimuth), cos(toward_.h_most - azimuth));
    for (const double turns : {-360.0, 0.0, 360.0})
        if (azimuth + degrees(turns) >= toward_.h_least &&
            azimuth + degrees(turns) <= toward_.h_most)
            along = 1;
    const Angle best =
        std::clamp(angle_of(normal.z(), level * along), toward_.v_least, toward_.v_most);
    double most = -1;
    for (const Angle v : {toward_.v_least, best, toward_.v_most})
        most = std::max(most, level * along * cos(v) + normal.z() * sin(v));
    return most;
}

std::uint32_t SightSheaf::build(std::uint32_t first, std::uint32_t last)
{
    Box box;
    for (std::uint32_t f = first; f < last; ++f)
        for (const Point& x : facets_[f].corners)
            box.add(x);
    const auto place = static_cast<std::uint32_t>(nodes_.size());
    nodes_.push_back({box.least, box.most, first, last, 0});
    if (last - first <= facets_a_leaf)
        return place;
    Eigen::Index axis = 0;
    box.size().maxCoeff(&axis);
    const std::uint32_t middle = first + (last - first) / 2;
    const auto key = [axis](const LitFacet& f) {
        return f.corners[0][axis] + f.corners[1][axis] + f.corners[2][axis];
    };
    std::stable_sort(facets_.begin() + first, facets_.begin() + last,
                     [&](const LitFacet& a, const LitFacet& b) { return key(a) < key(b); });
    build(first, middle);
    const std::uint32_t second = build(middle, last);
    nodes_[place].second_child = second;
    return place;
}

std::optional<HeightSpan> SightSheaf::span(const Ask& ask, const LitFacet& facet) const
{
    const FacetPiece piece = ask.piece_of(facet, *this);
    if (piece.empty())
        return std::nullopt;
    double top = reach_from(piece, ask.far, ask.cell[0]);
    double bottom = -reach_from(piece, ask.near, ask.cell[0]);
    if (facet.cut) {
        const double before =
            facet.normal.head<2>().dot(Point2(ask.cell[0] - facet.corners[0].head<2>()));
        const double plane = facet.corners[0].z() - before / facet.normal.z();
        if (std::abs(facet.normal.z()) < facing_grain) {
            if (before < 0)
                return std::nullopt;
        } else if (facet.normal.z() > 0)
            bottom = std::max(bottom, plane);
        else
            top = std::min(top, plane);
    }
    if (bottom > top)
        return std::nullopt;
    return HeightSpan{millimetres(bottom), millimetres(top)};
}

void SightSheaf::add_spans(const Point2& place, std::vector<HeightSpan>& spans) const
{
    const Ask ask({&place, 1}, Sense::up, *this);
    for (const LitFacet& facet : facets_)
        if (const std::optional<HeightSpan> taken = span(ask, facet))
            spans.push_back(*taken);
}

bool SightSheaf::holds(const Point& p) const
{
    const Point2 place = p.head<2>();
    return !nodes_.empty() && holds(Ask({&place, 1}, Sense::up, *this), 0, p);
}

bool SightSheaf::holds(const Ask& ask, std::uint32_t place, const Point& p) const
{
    const Node& node = nodes_[place];
    if (ask.misses(node.least, node.most, *this))
        return false;
    const double across = (p.head<2>() - node.least.head<2>())
                              .cwiseAbs()
                              .cwiseMax((p.head<2>() - node.most.head<2>()).cwiseAbs())
                              .norm();
    if (p.z() > node.most.z() + std::max(0.0, up_slope_) * across ||
        p.z() < node.least.z() + std::min(0.0, down_slope_) * across)
        return false;
    if (node.second_child != 0)
        return holds(ask, place + 1, p) || holds(ask, node.second_child, p);
    for (std::uint32_t f = node.first; f < node.last; ++f)
        if (const auto taken = span(ask, facets_[f]);
            taken && in_mm(taken->bottom) <= p.z() && p.z() <= in_mm(taken->top))
            return true;
    return false;
}

} // namespace glim
