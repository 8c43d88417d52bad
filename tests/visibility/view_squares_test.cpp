#include "visibility/view_squares.h"

#include "shapes/rough_scene.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

ViewWindow window(double x, double y, double width, double height)
{
    ViewWindow made;
    made.add({x, y});
    made.add({x + width, y + height});
    return made;
}

} // namespace

TEST_CASE("squares find what a walk through all things finds, each once", "[visibility]")
{
    Sequence s(0.3);
    ViewSquares squares(window(0, 0, 100, 50), 300);
    std::vector<ViewWindow> things;
    for (int i = 0; i < 300; ++i) {
        // Some lie outside the window, some reach across all of it.
        things.push_back(
            window(s.next(-30, 120), s.next(-30, 70), s.next(0, 20) * s.next(0, 5), s.next(0, 20)));
        squares.add(things.back());
    }
    ViewSquares::Asker asker;
    for (int i = 0; i < 50; ++i) {
        const ViewWindow asked = window(s.next(-20, 110), s.next(-20, 60), s.next(0, 30), 3);
        std::vector<std::uint32_t> found = squares.near(asked, asker);
        std::sort(found.begin(), found.end());
        std::vector<std::uint32_t> expected;
        for (std::uint32_t t = 0; t < things.size(); ++t)
            if (things[t].meets(asked))
                expected.push_back(t);
        CHECK(found == expected);
    }
}

TEST_CASE("things on one point are found there", "[visibility]")
{
    ViewSquares squares(window(5, 5, 0, 0), 2);
    squares.add(window(5, 5, 0, 0));
    squares.add(window(0, 0, 4, 4));
    ViewSquares::Asker asker;
    CHECK(squares.near(window(5, 5, 0, 0), asker) == std::vector<std::uint32_t>{0});
}
