#include "visibility/facet_hits.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("of every part the nearest facet is kept, by part", "[visibility]")
{
    std::vector<FacetHit> met = {{2, 5, 30}, {0, 7, 40}, {2, 1, 31}, {0, 9, 20}};
    keep_first_of_every_part(met, 0.05F);
    REQUIRE(met.size() == 2);
    CHECK(met[0].part == 0);
    CHECK(met[0].facet == 9);
    CHECK(met[0].distance == 20);
    CHECK(met[1].part == 2);
    CHECK(met[1].facet == 5);
    CHECK(first_of(met, 0.05F) == 0);
}

TEST_CASE("facets within the tie are one place, whichever is met first", "[visibility]")
{
    for (const bool turned : {false, true}) {
        std::vector<FacetHit> met = {{1, 8, 10.00F}, {1, 3, 10.04F}, {1, 0, 10.09F}};
        if (turned)
            std::swap(met.front(), met.back());
        keep_first_of_every_part(met, 0.05F);
        REQUIRE(met.size() == 1);
        CHECK(met[0].facet == 3); // 10.09 is too far behind the nearest
        CHECK(met[0].distance == 10.00F);
    }
}

TEST_CASE("among parts within the tie the lowest is the first, even if it lies behind",
          "[visibility]")
{
    const std::vector<FacetHit> met = {{0, 1, 12}, {1, 4, 10.04F}, {2, 2, 10}};
    CHECK(first_of(met, 0.05F) == 1);
    CHECK(first_of(met, 0.01F) == 2);
}

TEST_CASE("rays keep their own facets, and some have none", "[visibility]")
{
    FacetHits hits;
    const std::vector<FacetHit> two = {{0, 1, 2}, {1, 3, 4}};
    hits.add_ray({});
    hits.add_ray(two);
    hits.add_ray({});
    hits.add_ray(std::span(two).first(1));
    CHECK(hits.rays() == 4);
    CHECK(hits.of(0).empty());
    REQUIRE(hits.of(1).size() == 2);
    CHECK(hits.of(1)[1].facet == 3);
    CHECK(hits.of(2).empty());
    CHECK(hits.of(3).size() == 1);
}
