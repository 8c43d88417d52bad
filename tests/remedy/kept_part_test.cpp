#include "remedy/kept_part.h"

#include "remedy/keep_clear_scenes.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

// A plate of 150 by 60: seen at H, all of it shows 9000 cos(H) cos(V).
TEST_CASE("the kept part of a plate shows what is needed and little more", "[remedy]")
{
    const TriangleMesh plate = shapes::plate(Point(0, 0, 0), 150, 60, 3);
    const KeptParts kept =
        kept_parts(plate, {{field(-45, 45, -15, 15)}}, {square_millimetres(2000), 0},
                   FavouredEdge::upper, degrees(15));
    CHECK(kept.parts.size() == 12); // six across, above and below the horizontal
    CHECK(kept.too_small == 0);
    for (const KeptPart& part : kept.parts) {
        const Angle h = std::max(part.toward.h_most, -part.toward.h_least);
        const double needed = 2000 * (1 + kept_spare) / (cos(h) * cos(degrees(15)));
        CHECK(part.level == Approx(30 - needed / 150).margin(1e-6));
    }
}

TEST_CASE("each favoured edge keeps its own side", "[remedy]")
{
    const TriangleMesh plate = shapes::plate(Point(0, 0, 0), 150, 60, 1);
    const Field ahead{{field(-1, 1, -1, 1)}};
    const auto box_for = [&](FavouredEdge edge) {
        const KeptParts kept =
            kept_parts(plate, ahead, {square_millimetres(900), 0}, edge, degrees(45));
        Box box;
        std::vector<HeightSpan> spans;
        for (const SightSheaf& sheaf : sheaves_of(plate, kept))
            for (double y = -70; y <= 70; y += 5) {
                spans.clear();
                sheaf.add_spans({1e-3, y}, spans);
                for (const HeightSpan& span : spans) {
                    box.add({0, y, in_mm(span.bottom)});
                    box.add({0, y, in_mm(span.top)});
                }
            }
        return box;
    };
    CHECK(box_for(FavouredEdge::upper).least.z() > 20);
    CHECK(box_for(FavouredEdge::lower).most.z() < -20);
    CHECK(box_for(FavouredEdge::outer).least.y() > 50);
    CHECK(box_for(FavouredEdge::inner).most.y() < -50);
}

TEST_CASE("where the whole lamp shows too little, it is kept whole and told", "[remedy]")
{
    const TriangleMesh plate = shapes::plate(Point(0, 0, 0), 150, 60, 1);
    const KeptParts kept =
        kept_parts(plate, {{field(0, 80, -10, 10)}}, {square_millimetres(4500), 0},
                   FavouredEdge::upper, degrees(40));
    CHECK(kept.parts.size() == 4);
    CHECK(kept.too_small == 2); // beyond 60 degrees the cosine is below one half
}
