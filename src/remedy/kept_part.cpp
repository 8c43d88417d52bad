#include "remedy/kept_part.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace glim {

namespace {

constexpr double whole_face = -std::numeric_limits<double>::infinity();
/// A halving of the lamp's height each: to less than a nanometre.
constexpr int most_halvings = 40;

Vector axis_of(FavouredEdge edge)
{
    switch (edge) {
    case FavouredEdge::lower:
        return -Vector::UnitZ();
    case FavouredEdge::inner:
        return -Vector::UnitY();
    case FavouredEdge::outer:
        return Vector::UnitY();
    case FavouredEdge::upper:
    case FavouredEdge::least_volume:
        break;
    }
    return Vector::UnitZ();
}

/// Cut into equal pieces of H, and at V = 0, so that every sheaf has ends known in closed form; a
/// line or a point is one.
std::vector<FieldRectangle> pieces_of(const Field& field, Angle widest)
{
    constexpr double grain = 1e-9; // a whole number of steps is not one more
    std::vector<FieldRectangle> pieces;
    for (const FieldRectangle& r : field.rectangles) {
        const Angle width = r.h_most - r.h_least;
        const int count = std::max(1, static_cast<int>(std::ceil(width / widest - grain)));
        for (int i = 0; i < count; ++i) {
            const Angle least = r.h_least + width * i / count;
            const Angle most = i + 1 == count ? r.h_most : r.h_least + width * (i + 1) / count;
            if (r.v_least < Angle() && r.v_most > Angle()) {
                pieces.push_back({least, most, Angle(), r.v_most});
                pieces.push_back({least, most, r.v_least, Angle()});
            } else
                pieces.push_back({least, most, r.v_least, r.v_most});
        }
    }
    return pieces;
}

/// The share of a triangle, corners at these heights in order, that lies at `level` or higher.
double share_above(const std::array<double, 3>& h, double level)
{
    if (level <= h[0])
        return 1;
    if (level >= h[2])
        return 0;
    if (level <= h[1])
        return 1 - (level - h[0]) * (level - h[0]) / ((h[1] - h[0]) * (h[2] - h[0]));
    return (h[2] - level) * (h[2] - level) / ((h[2] - h[0]) * (h[2] - h[1]));
}

/// A face by facets: how large each is as it faces a direction, and where its corners stand along
/// the favoured axis.
class SlicedFace {
public:
    SlicedFace(const TriangleMesh& lit, const Vector& axis)
    {
        for (std::size_t f = 0; f < lit.facets.size(); ++f) {
            areas_.push_back(area_vector(lit, f));
            std::array<double, 3> h = {axis.dot(lit.corner(f, 0)), axis.dot(lit.corner(f, 1)),
                                       axis.dot(lit.corner(f, 2))};
            std::sort(h.begin(), h.end());
            heights_.push_back(h);
            least_ = std::min(least_, h[0]);
            most_ = std::max(most_, h[2]);
        }
    }

    double seen_above(double level, const Vector& toward) const
    {
        double seen = 0;
        for (std::size_t f = 0; f < areas_.size(); ++f)
            if (const double facing = areas_[f].dot(toward); facing > 0)
                seen += facing * share_above(heights_[f], level);
        return seen;
    }

    /// The highest level above which so much is seen; nothing if the whole face shows less.
    std::optional<double> level_for(const PartNeeded& needed, const Vector& toward) const
    {
        const double whole = seen_above(whole_face, toward);
        const double needed_mm2 = (1 + kept_spare) * in_mm2(needed.area);
        const double needed_of_whole = std::min(1.0, (1 + kept_spare) * needed.share) * whole;
        return level_for(std::max(needed_mm2, needed_of_whole), whole, toward);
    }

private:
    std::optional<double> level_for(double needed_mm2, double whole, const Vector& toward) const
    {
        if (whole <= 0 || whole < needed_mm2)
            return std::nullopt;
        double low = least_, high = most_;
        for (int i = 0; i < most_halvings; ++i) {
            const double middle = (low + high) / 2;
            (seen_above(middle, toward) >= needed_mm2 ? low : high) = middle;
        }
        return low;
    }

    std::vector<Vector> areas_;
    std::vector<std::array<double, 3>> heights_;
    double least_ = std::numeric_limits<double>::infinity(), most_ = -least_;
};

/// Lowest where it is asked in nine places of the piece; nothing where one shows too little.
std::optional<double> level_over(const SlicedFace& face, const FieldRectangle& piece,
                                 const PartNeeded& needed)
{
    double lowest = std::numeric_limits<double>::infinity();
    for (const double i : {0.0, 0.5, 1.0})
        for (const double j : {0.0, 0.5, 1.0}) {
            const Bearing b{piece.h_least + i * (piece.h_most - piece.h_least),
                            piece.v_least + j * (piece.v_most - piece.v_least)};
            const auto level = face.level_for(needed, direction_of(b, LampFrame{}).vector());
            if (!level)
                return std::nullopt;
            lowest = std::min(lowest, *level);
        }
    return lowest;
}

/// The part of a facet at `level` or higher, as a fan.
void add_above(const TriangleMesh& lit, std::size_t f, const KeptPart& part, const Vector& axis,
               TriangleMesh& above)
{
    const auto first = static_cast<std::uint32_t>(above.points.size());
    std::uint32_t corners = 0;
    for (int i = 0; i < 3; ++i) {
        const Point& a = lit.corner(f, i);
        const Point& b = lit.corner(f, (i + 1) % 3);
        const double side_a = axis.dot(a) - part.level;
        const double side_b = axis.dot(b) - part.level;
        if (side_a >= 0) {
            above.points.push_back(a);
            ++corners;
        }
        if ((side_a < 0) != (side_b < 0) && side_a != side_b) {
            above.points.push_back(a + side_a / (side_a - side_b) * (b - a));
            ++corners;
        }
    }
    for (std::uint32_t c = 2; c < corners; ++c)
        above.facets.push_back({first, first + c - 1, first + c});
}

} // namespace

KeptParts kept_parts(const TriangleMesh& lit, const Field& field, const PartNeeded& needed,
                     FavouredEdge edge, Angle step)
{
    KeptParts kept{edge, {}, field, 0};
    const SlicedFace face(lit, axis_of(edge));
    for (const FieldRectangle& piece : pieces_of(field, step)) {
        const auto level = level_over(face, piece, needed);
        kept.parts.push_back({piece, level.value_or(whole_face)});
        kept.too_small += level ? 0 : 1;
    }
    return kept;
}

KeptParts whole_parts(const Field& field)
{
    KeptParts kept;
    kept.field = field;
    for (const FieldRectangle& r : field.rectangles) {
        const int count = std::max(
            1, static_cast<int>(std::ceil((r.h_most - r.h_least) / SightSheaf::most_width)));
        for (int i = 0; i < count; ++i)
            kept.parts.push_back(
                {{r.h_least + (r.h_most - r.h_least) * i / count,
                  r.h_least + (r.h_most - r.h_least) * (i + 1) / count, r.v_least, r.v_most},
                 whole_face});
    }
    return kept;
}

std::vector<SightSheaf> sheaves_of(const TriangleMesh& lit, const KeptParts& kept)
{
    std::vector<SightSheaf> sheaves;
    const Vector axis = axis_of(kept.edge);
    for (const KeptPart& part : kept.parts) {
        if (part.level == whole_face) {
            sheaves.emplace_back(lit, part.toward);
            continue;
        }
        TriangleMesh above;
        for (std::size_t f = 0; f < lit.facets.size(); ++f)
            add_above(lit, f, part, axis, above);
        sheaves.emplace_back(above, part.toward);
    }
    return sheaves;
}

} // namespace glim
