#include "units/units.h"

#include <catch2/catch.hpp>

#include <type_traits>

using namespace glim;

namespace {

template <class A, class B>
concept Addable = requires(A a, B b)
{
    a + b;
};
template <class A, class B>
concept Comparable = requires(A a, B b)
{
    a < b;
};

static_assert(Addable<Length, Length>);
static_assert(!Addable<Angle, Length>, "an angle plus a length must not compile");
static_assert(!Comparable<Length, Area>, "a length beside an area must not compile");
static_assert(!std::is_convertible_v<double, Angle>);
static_assert(!std::is_convertible_v<Angle, double>);
static_assert(std::is_same_v<decltype(millimetres(2) * millimetres(3)), Area>);
static_assert(std::is_same_v<decltype(candelas(2) * steradians(3)), LuminousFlux>);
static_assert(std::is_same_v<decltype(millimetres(2) / millimetres(3)), double>);

} // namespace

TEST_CASE("a quantity gives back the number it was made of, bit for bit", "[units]")
{
    CHECK(in_degrees(degrees(0.1)) == 0.1);
    CHECK(in_mm(millimetres(1e-300)) == 1e-300);
    CHECK(in_mm2(square_millimetres(1250)) == 1250);
    CHECK(in_steradians(steradians(1.129311)) == 1.129311);
    CHECK(in_candelas(candelas(0.3)) == 0.3);
    CHECK(in_lumens(lumens(1000)) == 1000);
}

TEST_CASE("quantities of one kind add, scale and compare", "[units]")
{
    Angle a = degrees(10);
    a += degrees(5);
    a -= degrees(1);
    CHECK(a == degrees(14));
    CHECK(-a < degrees(0));
    CHECK(2 * a == a * 2);
    CHECK(a / 2 == degrees(7));
    CHECK(a / degrees(7) == 2);
    CHECK(millimetres(4) * millimetres(5) == square_millimetres(20));
    CHECK(candelas(4) * steradians(5) == lumens(20));
}
