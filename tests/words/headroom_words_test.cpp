#include "words/headroom_words.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// A study of these surfaces, each with this headroom; nothing for one that is free.
struct Told {
    Study study;
    KeepClear found;
    std::vector<Headroom> headroom;

    void add(const std::string& name, std::optional<double> mm, bool has_twin = false)
    {
        const SurfaceId id = study.surfaces.add(Surface{.name = name, .mesh = {}, .clear_for = {}});
        found.spaces.resize(1);
        for (const bool twin : {false, true}) {
            if (twin && !has_twin)
                continue;
            Headroom h;
            h.surface = {id, twin};
            if (mm)
                h.least = millimetres(*mm);
            headroom.push_back(std::move(h));
        }
    }
};

} // namespace

TEST_CASE("headroom is told in a sentence, the tightest first", "[words]")
{
    Told told;
    told.add("bezel lip", 0.3);
    told.add("bonnet edge", 1.4, true);
    CHECK(headroom_sentence(told.headroom, told.study) ==
          "Headroom along the normal, tightest first: `bezel lip` has 0.3 mm and `bonnet edge` "
          "1.4 mm.");
    told.add("roof", std::nullopt);
    CHECK(headroom_sentence(told.headroom, told.study) ==
          "Headroom along the normal, tightest first: `bezel lip` has 0.3 mm and `bonnet edge` "
          "1.4 mm; 1 surface has 100 mm or more.");
}

TEST_CASE("what lies inside is told before what is free, and five at most by name", "[words]")
{
    Told told;
    told.add("nose", -12.34);
    told.add("lip", -0.5);
    for (const double mm : {1.0, 2.0, 3.0, 4.0, 5.0})
        told.add("s" + std::to_string(static_cast<int>(mm)), mm);
    CHECK(headroom_sentence(told.headroom, told.study) ==
          "Headroom along the normal, tightest first: `nose` is 12.3 mm inside and `lip` 0.5 mm; "
          "`s1` has 1 mm, `s2` 2 mm and `s3` 3 mm; 2 more surfaces have less than 100 mm.");
}

TEST_CASE("a surface and its mirror image have one line where they have the same", "[words]")
{
    Told told;
    told.add("nose", 1.25, true);
    told.add("wing", 3, true);
    told.headroom.back().least = millimetres(3.5);
    const auto rows = headroom_rows(told.headroom);
    REQUIRE(rows.size() == 3);
    CHECK(rows[0].both_sides);
    CHECK_FALSE(rows[1].both_sides);
    const auto cells = headroom_cells(told.headroom, told.found, told.study);
    CHECK(cells[1][0] == "nose (each side)");
    CHECK(cells[1][1] == "1.25");
    CHECK(cells[3][0] == "wing (mirrored)");
}

TEST_CASE("of no surface no headroom is told", "[words]")
{
    const Told told;
    CHECK(headroom_sentence(told.headroom, told.study).empty());
    CHECK(headroom_words(told.headroom, told.found, told.study).empty());
}
