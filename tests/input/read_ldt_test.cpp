#include "input/read_ldt.h"

#include "input/bad_files.h"
#include "input/photometric_files.h"
#include "model/photometric_fields.h"

using namespace glim;
using namespace glim::test;

namespace {

Photometry read_text(const std::string& text) { return read_ldt(text, "lamp.ldt").photometry; }

std::vector<std::string> warnings_in(const std::string& text)
{
    std::vector<std::string> all;
    for (const Warning& warning : read_ldt(text, "lamp.ldt").warnings)
        all.push_back(warning.place.words() + ": " + warning.what);
    return all;
}

using Words = std::vector<std::string>;
using Planes = std::vector<std::pair<double, double>>;

/// 1 cd at the pole, and at gamma 90 each plane's own angle as its intensity.
IntensityGrid named_planes(const std::vector<double>& planes)
{
    IntensityGrid grid{Goniometer::c, {}, {degrees(0), degrees(90)}, {}};
    for (const double plane : planes) {
        grid.horizontal.push_back(degrees(plane));
        grid.candela.insert(grid.candela.end(), {candelas(1), candelas(plane)});
    }
    return grid;
}

/// Of each plane of the whole turn, which stored one it is.
Planes read_planes(int symmetry, const std::vector<double>& stored)
{
    const std::vector<double> listed = {0, 45, 90, 135, 180, 225, 270, 315};
    const Photometry photometry =
        read_text(ldt_of({.symmetry = symmetry}, listed, named_planes(stored)));
    CHECK(photometry.filed_horizontals == stored.size());
    Planes planes;
    for (std::size_t h = 0; h < photometry.grid.horizontal.size(); ++h)
        planes.emplace_back(in_degrees(photometry.grid.horizontal[h]),
                            in_candelas(photometry.grid.at(h, 1)));
    return planes;
}

const std::string plain = ldt_of({}, {0, 180}, named_planes({0, 180}));

} // namespace

TEST_CASE("all five symmetry codes are laid out to a whole turn", "[input]")
{
    CHECK(read_planes(0, {0, 45, 90, 135, 180, 225, 270, 315}) == Planes{{0, 0},
                                                                         {45, 45},
                                                                         {90, 90},
                                                                         {135, 135},
                                                                         {180, 180},
                                                                         {225, 225},
                                                                         {270, 270},
                                                                         {315, 315},
                                                                         {360, 0}});
    CHECK(read_planes(1, {0}) == Planes{{0, 0}, {360, 0}});
    CHECK(read_planes(2, {0, 45, 90, 135, 180}) == Planes{{0, 0},
                                                          {45, 45},
                                                          {90, 90},
                                                          {135, 135},
                                                          {180, 180},
                                                          {225, 135},
                                                          {270, 90},
                                                          {315, 45},
                                                          {360, 0}});
    CHECK(read_planes(3, {270, 315, 0, 45, 90}) == Planes{{0, 0},
                                                          {45, 45},
                                                          {90, 90},
                                                          {135, 45},
                                                          {180, 0},
                                                          {225, 315},
                                                          {270, 270},
                                                          {315, 315},
                                                          {360, 0}});
    CHECK(read_planes(4, {0, 45, 90}) == Planes{{0, 0},
                                                {45, 45},
                                                {90, 90},
                                                {135, 45},
                                                {180, 0},
                                                {225, 45},
                                                {270, 90},
                                                {315, 45},
                                                {360, 0}});
}

TEST_CASE("intensities are filed for 1000 lm", "[input]")
{
    const LdtFields fields{.symmetry = 0,
                           .lamp_sets = "1\n2\na kind\n500\nwhite\n80\n21,5\n",
                           .conversion = "0.9",
                           .output_ratio = "80"};
    const Photometry photometry = read_text(ldt_of(fields, {0, 180}, named_planes({0, 180})));
    CHECK(photometry.format == "EULUMDAT");
    CHECK(in_candelas(photometry.grid.at(1, 1)) == Approx(180 * 0.5 * 0.9));
    CHECK(in_lumens(photometry.stated_flux.value()) == 400);
    CHECK(photometry.stated_flux_is_of == StatedFlux::luminaire);
    CHECK_FALSE(photometry.absolute);
    CHECK(photometry.lamp_sets ==
          std::vector<LampSet>{
              {.count = 2, .kind = "a kind", .total_flux = lumens(500), .watts = 21.5}});
    CHECK(in_mm(photometry.opening.length) == 80);
    CHECK(in_mm(photometry.opening.width) == 40);
}

// The integral of a file that holds the whole light is what it states.
TEST_CASE("a Lambertian file gives back the flux that it states", "[input]")
{
    // A Lambertian of 1000 lm has 1000 / pi cd on its axis.
    const IntensityGrid grid =
        sampled(Goniometer::c, {degrees(0)}, angles(0, 90, 5), lambertian, parts_of_nadir);
    std::string text = ldt_of(
        {.symmetry = 1, .lamp_sets = "1\n1\n\n314.159265\n\n\n1\n", .conversion = "3.18309886"},
        {0}, grid);
    const Photometry photometry = read_text(text);
    CHECK(in_candelas(photometry.grid.at(0, 0)) == Approx(100));
    CHECK(in_lumens(flux_of(photometry.grid)) ==
          Approx(in_lumens(photometry.stated_flux.value())).epsilon(1e-3));
}

TEST_CASE("of several lamp sets the first counts, and a difference is told", "[input]")
{
    const std::string same = "2\n1\nfirst\n1000\n\n\n21\n1\nsecond\n1000\n\n\n22\n";
    const std::string other = "2\n1\nfirst\n1000\n\n\n21\n1\nsecond\n700\n\n\n22\n";
    const auto text = [](const std::string& sets) {
        return ldt_of({.lamp_sets = sets}, {0, 180}, named_planes({0, 180}));
    };
    CHECK(read_text(text(same)).lamp_sets.size() == 2);
    CHECK(warnings_in(text(same)).empty());
    CHECK(warnings_in(text(other)) ==
          Words{"lamp.ldt:35:1: the lamp sets of this file differ in flux"});
    CHECK(in_candelas(read_text(text(other)).grid.at(1, 1)) == 180);
}

TEST_CASE("a negative count of lamps marks absolute values", "[input]")
{
    const Photometry photometry = read_text(
        ldt_of({.lamp_sets = "1\n-1\nLED\n250\n\n\n3\n"}, {0, 180}, named_planes({0, 180})));
    CHECK(photometry.absolute);
    CHECK(in_candelas(photometry.grid.at(1, 1)) == 45);
}

TEST_CASE("decimal commas, carriage returns and Latin-1 read as the plain file does", "[input]")
{
    std::string other = plain;
    other.replace(other.find("\n1000\n"), 6, "\n1000,0\n");
    other.replace(other.find("a company"), 9, "Licht & S\xf6hne");
    for (std::size_t at = 0; (at = other.find('\n', at)) != std::string::npos; at += 2)
        other.insert(at, "\r");
    const Photometry photometry = read_text(other);
    CHECK(photometry.grid == read_text(plain).grid);
    CHECK(photometry.notes.front() == PhotometryNote{"company", "Licht & S\xc3\xb6hne"});
    CHECK(photometry.notes.size() == 6);
}

TEST_CASE("a width of 0 makes the opening round", "[input]")
{
    std::string round = plain;
    round.replace(round.find("80\n40\n"), 6, "80\n0\n");
    CHECK(in_mm(read_text(round).opening.width) == -80);
    CHECK(in_mm(read_text(round).opening.length) == -80);
}

TEST_CASE("oddities of a EULUMDAT file are warnings", "[input]")
{
    CHECK(warnings_in(plain).empty());
    CHECK(warnings_in(plain + "\r\n\x1a") ==
          Words{"lamp.ldt:52:1: the file ends with an old end-of-file mark"});
    CHECK(warnings_in(ldt_of({.tilt = "5"}, {0, 180}, named_planes({0, 180}))) ==
          Words{"lamp.ldt:25:1: the lamp was tilted when it was measured"});
    std::string step = plain;
    step.replace(step.find("\n2\n0\n2\n0\n"), 9, "\n2\n90\n2\n90\n");
    CHECK(warnings_in(step) ==
          Words{"lamp.ldt:5:1: the C planes are not as far apart as their step"});
}
