#include "geometry/turn.h"

#include <array>
#include <cmath>

namespace glim {

namespace {

/// The rounded determinant has the right sign if it is larger than this share of the sum of its two
/// products: more than twice the bound of (3 + 16 u) u, u = 2^-53, that the theory of rounding
/// gives.
constexpr double sure_share = 8 * 0x1p-53;

/// A sum of doubles without rounding: parts that do not overlap, the smallest first.
class ExactSum {
public:
    void add(double x)
    {
        for (std::size_t i = 0; i < size_; ++i) {
            // The rounded sum, and what rounding took from it: exact in binary arithmetic.
            const double sum = parts_[i] + x;
            const double of_x = sum - parts_[i];
            parts_[i] = (parts_[i] - (sum - of_x)) + (x - of_x);
            x = sum;
        }
        parts_[size_++] = x;
    }

    void add_product(double x, double y)
    {
        const double product = x * y;
        add(std::fma(x, y, -product));
        add(product);
    }

    /// The largest part that is not 0 outweighs all smaller ones.
    int sign() const
    {
        for (std::size_t i = size_; i-- > 0;)
            if (parts_[i] != 0)
                return parts_[i] > 0 ? 1 : -1;
        return 0;
    }

private:
    std::array<double, 12> parts_{}; ///< six products of two parts each
    std::size_t size_ = 0;
};

int exact_turn(const Point2& a, const Point2& b, const Point2& c)
{
    ExactSum sum;
    sum.add_product(a.x(), b.y());
    sum.add_product(-a.y(), b.x());
    sum.add_product(b.x(), c.y());
    sum.add_product(-b.y(), c.x());
    sum.add_product(c.x(), a.y());
    sum.add_product(-c.y(), a.x());
    return sum.sign();
}

} // namespace

int turn_of(const Point2& a, const Point2& b, const Point2& c)
{
    const double one = (a.x() - c.x()) * (b.y() - c.y());
    const double other = (a.y() - c.y()) * (b.x() - c.x());
    const double twice_area = one - other;
    // A product is 0 only where a difference is, and differences have the right sign.
    const bool sure = one == 0 || other == 0;
    if (sure || std::abs(twice_area) > sure_share * (std::abs(one) + std::abs(other)))
        return (twice_area > 0) - (twice_area < 0);
    return exact_turn(a, b, c);
}

} // namespace glim
