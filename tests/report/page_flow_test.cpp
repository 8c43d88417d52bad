#include "report/page_flow.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

Piece piece(double height) { return {.above = 10, .height = height}; }

Piece heading()
{
    Piece heading = piece(20);
    heading.keep_with_next = true;
    return heading;
}

std::vector<std::size_t> lengths(const std::vector<PagePieces>& pages)
{
    std::vector<std::size_t> all;
    for (const PagePieces& page : pages)
        all.push_back(page.size());
    return all;
}

} // namespace

TEST_CASE("pieces stand below each other, and the first of a page at its top", "[report]")
{
    const std::vector<Piece> pieces{piece(40), piece(40), piece(40)};
    const auto pages = flowed(pieces, 100);
    REQUIRE(lengths(pages) == std::vector<std::size_t>{2, 1});
    CHECK(pages[0][0].y == 0);
    CHECK(pages[0][1].y == 50);
    CHECK(pages[1][0].y == 0);
}

TEST_CASE("a page may be filled to the last point", "[report]")
{
    const std::vector<Piece> pieces{piece(40), piece(50)};
    CHECK(flowed(pieces, 100).size() == 1);
}

TEST_CASE("a heading goes to the next page with what it heads", "[report]")
{
    const std::vector<Piece> pieces{piece(50), heading(), piece(30)};
    CHECK(lengths(flowed(pieces, 100)) == std::vector<std::size_t>{1, 2});
}

TEST_CASE("a heading whose text fits nowhere with it stays where it is", "[report]")
{
    const std::vector<Piece> pieces{piece(20), heading(), piece(95)};
    CHECK(lengths(flowed(pieces, 100)) == std::vector<std::size_t>{2, 1});
}

TEST_CASE("a table that goes on has its head on every page", "[report]")
{
    const auto head = std::make_shared<const Piece>(Piece{.above = 10, .height = 10});
    std::vector<Piece> pieces{*head};
    pieces.back().keep_with_next = true;
    for (int i = 0; i < 4; ++i) {
        pieces.push_back({.height = 40});
        pieces.back().repeated = head;
    }
    const auto pages = flowed(pieces, 100);
    REQUIRE(lengths(pages) == std::vector<std::size_t>{3, 3});
    CHECK(pages[1][0].piece == head.get());
    CHECK(pages[1][1].y == 10);
}

TEST_CASE("who asks for a page begins one, unless it is empty anyway", "[report]")
{
    std::vector<Piece> pieces{piece(10), piece(10)};
    pieces[0].begins_page = pieces[1].begins_page = true;
    CHECK(lengths(flowed(pieces, 100)) == std::vector<std::size_t>{1, 1});
}

TEST_CASE("nothing makes no page", "[report]") { CHECK(flowed({}, 100).empty()); }
