#pragma once

#include <compare>

namespace glim {

/// A number that knows what it measures. `Kind` is a tag: quantities of different kinds neither
/// add nor compare, and a bare double becomes one only by a function that names the unit.
template <class Kind>
class Quantity {
public:
    constexpr Quantity() = default;

    /// For the naming functions of `units/` only: `count` is in the kind's kept unit.
    static constexpr Quantity of(double count) { return Quantity(count); }
    constexpr double count() const { return count_; }

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return of(a.count_ + b.count_); }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return of(a.count_ - b.count_); }
    friend constexpr Quantity operator-(Quantity a) { return of(-a.count_); }
    friend constexpr Quantity operator*(double k, Quantity a) { return of(k * a.count_); }
    friend constexpr Quantity operator*(Quantity a, double k) { return of(k * a.count_); }
    friend constexpr Quantity operator/(Quantity a, double k) { return of(a.count_ / k); }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.count_ / b.count_; }
    constexpr Quantity& operator+=(Quantity b) { return *this = *this + b; }
    constexpr Quantity& operator-=(Quantity b) { return *this = *this - b; }

private:
    explicit constexpr Quantity(double count) : count_(count) {}
    double count_ = 0;
};

} // namespace glim
