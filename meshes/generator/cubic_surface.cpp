#include "generator/cubic_surface.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace glim::demo {
namespace {

constexpr int degree = 3;

/// The four control points that count at a parameter, and by how much.
struct Basis {
    int first = 0;
    std::array<double, degree + 1> weight{};
};

double knot(int place, int count) { return std::clamp(place - degree, 0, count - degree); }

// Cox and de Boor's recurrence, rising one degree a turn.
Basis basis_at(double t, int count)
{
    const int span = degree + std::clamp(static_cast<int>(std::floor(t)), 0, count - degree - 1);
    Basis b{span - degree, {1, 0, 0, 0}};
    for (int rank = 1; rank <= degree; ++rank) {
        double carried = 0;
        for (int r = 0; r < rank; ++r) {
            const double right = knot(span + r + 1, count) - t;
            const double left = t - knot(span + 1 - rank + r, count);
            const double share = b.weight[r] / (right + left);
            b.weight[r] = carried + right * share;
            carried = left * share;
        }
        b.weight[rank] = carried;
    }
    return b;
}

} // namespace

CubicSurface::CubicSurface(int columns, int rows, std::vector<Point> net)
    : columns_(columns), rows_(rows), net_(std::move(net))
{
    assert(columns > degree && rows > degree);
    assert(net_.size() == static_cast<std::size_t>(columns) * rows);
}

Point CubicSurface::at(const Point2& uv) const
{
    const Basis across = basis_at(uv.x(), columns_);
    const Basis upward = basis_at(uv.y(), rows_);
    Point p = Point::Zero();
    for (int j = 0; j <= degree; ++j)
        for (int i = 0; i <= degree; ++i)
            p += across.weight[i] * upward.weight[j] *
                 net_[(upward.first + j) * columns_ + across.first + i];
    return p;
}

} // namespace glim::demo
