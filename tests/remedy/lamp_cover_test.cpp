#include "remedy/lamp_cover.h"

#include "shapes/random_numbers.h"

#include <catch2/catch.hpp>

#include <bit>

using namespace glim;
using shapes::RandomNumbers;

namespace {

std::vector<bool> set_of(unsigned bits, int things)
{
    std::vector<bool> set;
    for (int t = 0; t < things; ++t)
        set.push_back((bits >> t & 1) != 0);
    return set;
}

} // namespace

TEST_CASE("one set that holds everything is enough", "[remedy]")
{
    const auto cover = fewest_sets({set_of(0b0011, 4), set_of(0b1111, 4), set_of(0b1100, 4)});
    REQUIRE(cover);
    CHECK(cover->sets == std::vector<std::size_t>{1});
    CHECK(cover->is_fewest);
}

TEST_CASE("where two sets are enough, the larger third one is not taken first", "[remedy]")
{
    // The greedy choice begins with the set of four and needs three.
    const auto cover = fewest_sets({set_of(0b011110, 6), set_of(0b000111, 6), set_of(0b111000, 6)});
    REQUIRE(cover);
    CHECK(cover->sets == std::vector<std::size_t>{1, 2});
    CHECK(cover->is_fewest);
}

TEST_CASE("sets that leave something out together cover nothing", "[remedy]")
{
    CHECK_FALSE(fewest_sets({set_of(0b0011, 4), set_of(0b0110, 4)}));
    CHECK_FALSE(fewest_sets({}));
}

TEST_CASE("what is proved to be the fewest is what trying all choices gives", "[remedy]")
{
    constexpr int things = 8;
    RandomNumbers random(7);
    for (int round = 0; round < 200; ++round) {
        std::vector<unsigned> bits;
        std::vector<std::vector<bool>> sets;
        for (int i = 0; i < 9; ++i) {
            bits.push_back(static_cast<unsigned>(random.whole(0, 255) & random.whole(0, 255)));
            sets.push_back(set_of(bits.back(), things));
        }
        int fewest = 99;
        for (unsigned choice = 1; choice < 512; ++choice) {
            unsigned all = 0;
            for (int i = 0; i < 9; ++i)
                if (choice >> i & 1)
                    all |= bits[i];
            if (all == 255)
                fewest = std::min(fewest, std::popcount(choice));
        }
        const auto cover = fewest_sets(sets);
        REQUIRE(cover.has_value() == (fewest < 99));
        if (!cover)
            continue;
        unsigned all = 0;
        for (const std::size_t s : cover->sets)
            all |= bits[s];
        CHECK(all == 255);
        CHECK(static_cast<int>(cover->sets.size()) >= fewest);
        if (cover->is_fewest)
            CHECK(static_cast<int>(cover->sets.size()) == fewest);
        if (fewest <= 3)
            CHECK(cover->is_fewest);
    }
}
