#include "input/read_ies.h"

#include "input/bad_files.h"
#include "input/ies_edition.h"
#include "input/photometric_files.h"
#include "model/mounting.h"
#include "model/photometric_fields.h"

using namespace glim;
using namespace glim::test;

namespace {

PhotometryFile read_whole(const std::string& text)
{
    return read_ies(text, "lamp.ies", [](const std::string&) { return std::nullopt; });
}

Photometry read_text(const std::string& text) { return read_whole(text).photometry; }

/// Type C, three gammas, two planes: nothing that is special.
const std::string keywords = "[TEST] 1\n[TESTLAB] 2\n[ISSUEDATE] 3\n[MANUFAC] 4\n";
const std::string plain = "IESNA:LM-63-1995\n" + keywords +
                          "TILT=NONE\n1 1000 1 3 2 1 2 0.05 0.1 0\n"
                          "1 1 21\n0 45 90\n0 90\n1 2 3\n1 5 6.5\n";

std::string with(std::string text, const std::string& old, const std::string& now)
{
    const std::size_t at = text.find(old);
    REQUIRE(at != std::string::npos);
    return text.replace(at, old.size(), now);
}

std::vector<std::string> warnings_in(const std::string& text)
{
    std::vector<std::string> all;
    for (const Warning& warning : read_whole(text).warnings)
        all.push_back(warning.place.words() + ": " + warning.what);
    return all;
}

using Words = std::vector<std::string>;

/// A type C file with two gammas and these planes, each of which has its own angle as candela.
std::string with_planes(const std::vector<double>& planes)
{
    IntensityGrid grid{Goniometer::c, {}, {degrees(0), degrees(90)}, {}};
    for (const double plane : planes) {
        grid.horizontal.push_back(degrees(plane));
        grid.candela.insert(grid.candela.end(), 2, candelas(plane));
    }
    return ies_of(grid);
}

double candela_toward(const Photometry& photometry, const Mounting& mounting, double h, double v)
{
    const auto turn = file_from_lamp(mounting, ReferenceAxis::forward);
    return in_candelas(intensity_toward(photometry.grid, turn, {degrees(h), degrees(v)}).value());
}

} // namespace

TEST_CASE("the numbers of an LM-63 file become what they stand for", "[input]")
{
    const Photometry photometry = read_text(plain);
    CHECK(photometry.format == "LM-63-1995");
    CHECK(photometry.symmetry == FiledSymmetry::both_planes);
    CHECK(photometry.filed_horizontals == 2);
    CHECK_FALSE(photometry.absolute);
    CHECK(in_lumens(photometry.stated_flux.value()) == 1000);
    CHECK(photometry.notes ==
          std::vector<PhotometryNote>{
              {"TEST", "1"}, {"TESTLAB", "2"}, {"ISSUEDATE", "3"}, {"MANUFAC", "4"}});
    CHECK(in_mm(photometry.opening.width) == 50);
    CHECK(in_mm(photometry.opening.length) == 100);
    CHECK(photometry.lamp_sets.front().watts == 21);
    CHECK(in_candelas(intensity_at(photometry.grid, {degrees(0), degrees(45)}).value()) == 2);
    CHECK(in_candelas(intensity_at(photometry.grid, {degrees(270), degrees(90)}).value()) == 6.5);
}

TEST_CASE("one skew field filed as A, B and C reads as one", "[input]")
{
    const auto half = angles(-90, 90, 1);
    const auto round = angles(0, 360, 1);
    const auto gamma = angles(0, 180, 1);
    const std::vector<std::pair<std::string, Mounting>> files = {
        {ies_of(sampled(Goniometer::a, half, half, skew_field, parts_of_a_and_b)),
         {BeamAxis::h0_v0, {}, Side::right}},
        {ies_of(sampled(Goniometer::b, half, half, skew_field, parts_of_a_and_b)),
         {BeamAxis::h0_v0, {}, Side::right}},
        {ies_of(sampled(Goniometer::c, round, gamma, skew_field, parts_of_nadir)),
         {BeamAxis::nadir, {}, Side::right}},
        {ies_of(sampled(Goniometer::c, round, gamma, skew_field, parts_of_upright)),
         {BeamAxis::c0_horizontal, {}, Side::right}},
    };
    for (const auto& [text, mounting] : files) {
        const Photometry photometry = read_text(text);
        for (const auto& [h, v] : std::vector<std::pair<double, double>>{
                 {0, 0}, {20, 5}, {45, 15}, {-45, 15}, {45, -15}, {80, 15}, {-80, -15}}) {
            const Vector d = file_vector(Goniometer::a, {degrees(h), degrees(v)});
            CHECK(candela_toward(photometry, mounting, h, v) ==
                  Approx(skew_field(d.x(), d.y(), d.z())).epsilon(1e-3));
        }
    }
}

// H runs clockwise in types A and B, C counter-clockwise (LM-63, in a public description of it).
TEST_CASE("the sense in which each type turns is pinned", "[input]")
{
    // 9 cd at H +90 alone, that is, to the right.
    const std::string a = "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 3 3 2 0 0 0 1 1 1\n-90 90\n"
                          "-90 0 90\n1 1 1 1 9 9\n";
    const Mounting of_right{BeamAxis::h0_v0, {}, Side::right};
    CHECK(candela_toward(read_text(a), of_right, 90, 0) == 9);
    CHECK(candela_toward(read_text(a), of_right, -90, 0) == 1);
    CHECK(candela_toward(read_text(with(a, "3 3 2", "3 2 2")), of_right, 89.999, 0) ==
          Approx(9).epsilon(1e-3));
    // 9 cd at C 90 alone: to the left if it stands upright, up if it hangs and looks ahead.
    const std::string c = "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 3 5 1 2 0 0 0 1 1 1\n0 90 180\n"
                          "0 90 180 270 360\n1 1 1 1 9 1 1 1 1 1 1 1 1 1 1\n";
    const Mounting upright{BeamAxis::c0_horizontal, {}, Side::right};
    CHECK(candela_toward(read_text(c), upright, -90, 0) == 9);
    CHECK(candela_toward(read_text(c), upright, 90, 0) == 1);
    const Mounting hung{BeamAxis::nadir, {}, Side::right};
    CHECK(candela_toward(read_text(c), hung, 0, 90) == 9);
    CHECK(candela_toward(read_text(c), hung, 0, -90) == 1);
}

TEST_CASE("every range of planes stands for a whole turn", "[input]")
{
    const auto symmetry = [](const std::vector<double>& planes) {
        return read_text(with_planes(planes)).symmetry;
    };
    CHECK(symmetry({0}) == FiledSymmetry::about_pole);
    CHECK(symmetry({0, 45, 90}) == FiledSymmetry::both_planes);
    CHECK(symmetry({0, 45, 180}) == FiledSymmetry::plane_c0_c180);
    CHECK(symmetry({90, 100, 270}) == FiledSymmetry::plane_c90_c270);
    CHECK(symmetry({0, 10, 360}) == FiledSymmetry::none);
    for (const auto& planes :
         std::vector<std::vector<double>>{{0}, {0, 90}, {0, 180}, {90, 270}, {0, 360}}) {
        const IntensityGrid grid = read_text(with_planes(planes)).grid;
        CHECK(in_degrees(grid.horizontal.front()) == 0);
        CHECK(in_degrees(grid.horizontal.back()) == 360);
    }
}

TEST_CASE("a type A file from H 0 on stands for both sides", "[input]")
{
    const Photometry photometry =
        read_text("IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 2 3 2 0 0 0 1 1 1\n0 90\n0 90\n1 2 3 4\n");
    CHECK(photometry.symmetry == FiledSymmetry::vertical_plane);
    CHECK(in_candelas(intensity_at(photometry.grid, {degrees(-45), degrees(0)}).value()) == 2);
    CHECK_FALSE(intensity_at(photometry.grid, {degrees(0), degrees(-1)}));
}

TEST_CASE("lines, blanks and commas may fall where they like", "[input]")
{
    const IntensityGrid expected = read_text(plain).grid;
    for (const char* numbers :
         {"1 1000 1 3 2 1 2 0.05 0.1 0 1 1 21 0 45 90 0 90 1 2 3 1 5 6.5",
          "1\n1000\n1\n3\n2\n1\n2\n.05\n.1\n0\n1\n1\n21\n0\n45\n90\n0\n90\n1\n2\n3\n1\n5\n6.5",
          "1,1000,1,3,2,1,2,0.05,0.1,0\r\n1,1,21\r\n0, 45 ,90\r\n0,90\r\n1,2\r\n3,1,5,\r\n6.5\r\n",
          "\t1 +1000 1.0 3 2 1 2 5e-2 1e-1 -0\n\n1 1 21\n0 45\n90 0\n90 1 2 3 1 5 650e-2  \n\n"})
        CHECK(read_text("IESNA:LM-63-1995\nTILT=NONE\n" + std::string(numbers)).grid == expected);
    CHECK(read_text(with(plain, "TILT=NONE", "tilt = none")).grid == expected);
}

TEST_CASE("multiplier and factors count as the edition says", "[input]")
{
    const auto first = [](const std::string& text) {
        return in_candelas(read_text(text).grid.at(0, 0));
    };
    CHECK(first(with(plain, "1 1000 1 ", "1 1000 2.5 ")) == 2.5);
    CHECK(first(with(plain, "1 1 21", "0.5 1 21")) == 0.5);
    const std::string old = with(plain, "IESNA:LM-63-1995", "IESNA91");
    CHECK(first(with(old, "1 1 21", "0.5 0.5 21")) == 0.25);
    CHECK(in_lumens(read_text(with(old, "1 1 21", "0.5 0.5 21")).stated_flux.value()) == 250);
    CHECK(in_lumens(read_text(with(plain, "1 1000 1 ", "2 1000 3 ")).stated_flux.value()) == 2000);
    const std::string newest = with(plain, "IESNA:LM-63-1995", "IES:LM-63-2019");
    CHECK(first(with(newest, "1 1 21", "1 1.00001 21")) == 1);
}

TEST_CASE("absolute files state no flux", "[input]")
{
    const Photometry photometry = read_text(with(plain, "1 1000 1 ", "1 -1 1 "));
    CHECK(photometry.absolute);
    CHECK_FALSE(photometry.stated_flux);
}

TEST_CASE("each edition is told by its first line", "[input]")
{
    for (const IesEditionRow& row : ies_editions) {
        const std::string line = std::string(row.first_line) + (row.first_line.empty() ? "" : "\n");
        const std::string text = with(plain, "IESNA:LM-63-1995\n", line);
        CHECK(read_text(text).format == row.name);
        CHECK(warnings_in(text).empty());
    }
}

TEST_CASE("lines without keywords are what a file of 1986 has", "[input]")
{
    const Photometry photometry =
        read_text(with(plain, "IESNA:LM-63-1995\n" + keywords, "A lamp\n\nof some kind\n"));
    CHECK(photometry.notes == std::vector<PhotometryNote>{{"", "A lamp"}, {"", "of some kind"}});
}

TEST_CASE("feet and metres tell the opening, and negative sizes stay", "[input]")
{
    const Photometry photometry = read_text(with(plain, "1 2 0.05 0.1 0", "1 1 -0.5 -0.5 0.25"));
    CHECK(in_mm(photometry.opening.width) == Approx(-152.4));
    CHECK(in_mm(photometry.opening.height) == Approx(76.2));
    CHECK(photometry.grid == read_text(plain).grid);
}

TEST_CASE("factors of TILT are passed over and told", "[input]")
{
    const std::string factors = "1\n3\n0 45 90\n1 0.95 0.9\n";
    const std::string included = with(plain, "TILT=NONE\n", "TILT=INCLUDE\n" + factors);
    CHECK(read_text(included).grid == read_text(plain).grid);
    CHECK(warnings_in(included) == Words{"lamp.ies:6:6: the factors of TILT are not applied"});

    const std::string named = with(plain, "TILT=NONE", "TILT=lamp.tlt");
    std::string asked;
    const PhotometryFile file = read_ies(named, "lamp.ies", [&](const std::string& name) {
        asked = name;
        return std::optional(factors);
    });
    CHECK(asked == "lamp.tlt");
    CHECK(file.photometry.grid == read_text(plain).grid);
    CHECK(complaints_of([&] {
              read_ies(named, "lamp.ies",
                       [](const std::string&) { return std::optional<std::string>("4 1 0 1"); });
          }) == "lamp.tlt:1:1: `4` is no position of a lamp for TILT\n"
                "    write 1, 2 or 3, as LM-63 numbers them\n");
}

TEST_CASE("oddities that do no harm are warnings", "[input]")
{
    CHECK(warnings_in(plain).empty());
    CHECK(warnings_in(with(plain, "IESNA:LM-63-1995", "IESNA: LM-63-1995")) ==
          Words{"lamp.ies:1:1: the first line `IESNA: LM-63-1995` is taken for LM-63-1995"});
    CHECK(warnings_in(with(plain, "IESNA:LM-63-1995", "IESNA95")) ==
          Words{"lamp.ies:1:1: the first line `IESNA95` is taken for LM-63-1995"});
    CHECK(warnings_in("IESNA:LM-63-1995\n" + plain) ==
          Words{"lamp.ies:2:1: the first line stands here twice; the last one counts"});
    CHECK(warnings_in(with(plain, "[TEST] 1", "[TEST]1\n[MORE]x\n[OTHER]")) ==
          Words{"lamp.ies:2:7: there is no blank between a keyword and its text (2 times in this "
                "file)"});
    CHECK(warnings_in(with(plain, "[TESTLAB] 2", "a lamp")) ==
          Words{"lamp.ies:3:1: this line has no keyword; it is kept as a note"});
    CHECK(warnings_in(plain + "\x1a") ==
          Words{"lamp.ies:13:1: the file ends with an old end-of-file mark"});
    CHECK(warnings_in(with(plain, "0 45 90\n", "0 45 60\n")) ==
          Words{"lamp.ies:9:1: gamma goes from 0 to 60 degrees, and the standard asks for 0 to 90, "
                "90 to 180 or 0 to 180"});
    CHECK(warnings_in(with(plain, "0 90\n1", "0 360\n1")) ==
          Words{"lamp.ies:10:3: the planes C 0 and C 360 are one, and differ in this file"});
}

TEST_CASE("keywords that the edition demands are missed", "[input]")
{
    CHECK(warnings_in(with(plain, "[MANUFAC] 4\n", "")) ==
          Words{"lamp.ies:5:1: LM-63-1995 demands `[MANUFAC]`, which this file does not have"});
    CHECK(warnings_in(with(plain, "[TESTLAB] 2\n[ISSUEDATE] 3\n", "")).empty());
    const std::string of_2002 = with(plain, "LM-63-1995", "LM-63-2002");
    CHECK(warnings_in(with(of_2002, "[TESTLAB] 2\n[ISSUEDATE] 3\n", "[testlab] x\n")) ==
          Words{"lamp.ies:5:1: LM-63-2002 demands `[ISSUEDATE]`, which this file does not have"});
    CHECK(warnings_in(with(with(plain, "IESNA:LM-63-1995\n", ""), keywords, "")).empty());
}

TEST_CASE("planes that differ at a pole are told with their figures", "[input]")
{
    const auto pole_warning = [](Goniometer goniometer, const std::vector<Angle>& h,
                                 const std::vector<Angle>& v, std::vector<double> values) {
        IntensityGrid grid{goniometer, h, v, {}};
        for (const double value : values)
            grid.candela.push_back(candelas(value));
        std::string text = with(ies_of(grid), "[TEST] made up\n", keywords);
        return warnings_in(text);
    };
    const std::vector<Angle> half = angles(-90, 90, 90);
    // Type C: gamma 0 and 180 are one direction each.
    CHECK(
        pole_warning(Goniometer::c, {degrees(0), degrees(90)}, {degrees(0), degrees(180)},
                     {10, 3, 12, 3}) ==
        Words{"lamp.ies:9:1: at gamma 0, which is one direction, the file gives from 10 to 12 cd"});
    // Type A: V -90 and V 90, along every H.
    CHECK(pole_warning(Goniometer::a, half, half, {1, 9, 2, 1, 9, 2, 1, 9, 3}) ==
          Words{"lamp.ies:11:1: at V 90, which is one direction, the file gives from 2 to 3 cd"});
    // Type B: H -90 and H 90, along every V.
    CHECK(pole_warning(Goniometer::b, half, half, {5, 5, 7, 9, 9, 9, 5, 5, 5}) ==
          Words{"lamp.ies:12:1: at H -90, which is one direction, the file gives from 5 to 7 cd"});
    // The grain of measuring: a hundredth of the peak.
    CHECK(pole_warning(Goniometer::a, half, half, {1, 9, 2, 1, 100, 2, 1, 9, 3}).empty());
}

TEST_CASE("a file of the field alone is read, and warned of", "[input]")
{
    const IntensityGrid field = sampled(Goniometer::a, angles(-45, 80, 5), angles(-15, 15, 5),
                                        skew_field, parts_of_a_and_b);
    CHECK(read_text(ies_of(field)).grid == field);
    CHECK(warnings_in(with(ies_of(field), "[TEST] made up\n", keywords)).size() == 2);
}

TEST_CASE("notes in Latin-1 become UTF-8", "[input]")
{
    CHECK(read_text(with(plain, "[TEST] 1", "[TEST] M\xfcller 10\xb0")).notes.front().text ==
          "M\xc3\xbcller 10\xc2\xb0");
    CHECK(read_text(with(plain, "[TEST] 1", "[TEST] M\xc3\xbcller")).notes.front().text ==
          "M\xc3\xbcller");
}
