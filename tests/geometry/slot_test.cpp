#include "geometry/slot.h"

#include <catch2/catch.hpp>

#include <string>
#include <type_traits>

using namespace glim;

namespace {

using HouseId = SlotId<struct HouseKind>;
using DoorId = SlotId<struct DoorKind>;
using Houses = Slots<HouseId, std::string>;

template <class Table, class Place>
concept Asks = requires(Table table, Place place)
{
    table[place];
};

static_assert(Asks<Houses, HouseId>);
static_assert(!Asks<Houses, DoorId>, "a place of another kind must not compile");
static_assert(!Asks<Houses, int>, "a bare number must not compile");

} // namespace

TEST_CASE("what is added is found at the place that was given for it", "[geometry]")
{
    Houses houses;
    CHECK(houses.empty());
    const HouseId first = houses.add("first");
    const HouseId second = houses.add("second");
    CHECK(houses[first] == "first");
    CHECK(houses[second] == "second");
    CHECK(houses.size() == 2);
    CHECK(houses.ids() == std::vector<HouseId>{first, second});
}

TEST_CASE("a table may be made full of one value", "[geometry]")
{
    const Houses houses(3, "same");
    CHECK(houses.size() == 3);
    CHECK(houses[HouseId{2}] == "same");
}
