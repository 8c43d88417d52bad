#include "drawing/canvas.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

namespace glim {

namespace {

/// Something of everything that a canvas can do.
Drawing specimen()
{
    return {200, 120, [](Canvas& canvas) {
                canvas.fill(path_of({10, 10, 80, 40}), {{230, 159, 0}});
                canvas.hatch(path_of({10, 10, 80, 40}), {});
                canvas.stroke(path_of({10, 10, 80, 40}), {.width = 1.5});
                canvas.stroke(segment({10, 60}, {90, 60}), {.dashes = {4, 2}});
                canvas.stroke(circle_at({150, 30}, 18), {});
                canvas.text({10, 70}, {.words = "45\u00b0 inboard, a long name_that_has_no_blank",
                                       .width = 80});
                canvas.text({190, 70}, {.words = "1250 mm\u00b2", .align = Align::right});
                canvas.upward_text({100, 60}, {.words = "up and down"});
                Raster raster(2, 2);
                raster.at(0, 0) = {0, 114, 178};
                raster.at(1, 1) = {213, 94, 0};
                canvas.image(raster, {120, 85, 30, 30}, Grain::sharp);
            }};
}

std::string keep(const std::string& name, const std::string& bytes)
{
    const std::filesystem::path folder = std::filesystem::path(GLIM_BINARY_DIR) / "looked-at";
    std::filesystem::create_directories(folder);
    std::ofstream(folder / name, std::ios::binary) << bytes;
    return bytes;
}

std::size_t count_of(const std::string& what, const std::string& in)
{
    std::size_t count = 0;
    for (std::size_t at = in.find(what); at != std::string::npos; at = in.find(what, at + 1))
        ++count;
    return count;
}

} // namespace

TEST_CASE("the same drawing gives the same bytes as SVG, PNG and PDF", "[drawing]")
{
    const std::vector<Drawing> pages{specimen(), specimen()};
    const std::vector<Bookmark> marks{
        {1, "First", 0, 0}, {2, "Within", 0, 60}, {1, "Second", 1, 0}};
    // Compared outside the macro: nobody wants to read them where they differ.
    const bool same_svg = keep("specimen.svg", svg_of(specimen())) == svg_of(specimen());
    const bool same_png = keep("specimen.png", png_of(specimen(), 4)) == png_of(specimen(), 4);
    const bool same_pdf = keep("specimen.pdf", pdf_of(pages, marks, {"Specimen", ""})) ==
                          pdf_of(pages, marks, {"Specimen", ""});
    CHECK(same_svg);
    CHECK(same_png);
    CHECK(same_pdf);
}

TEST_CASE("a PDF has a page a drawing, its bookmarks, and a date only where it is told one",
          "[report]")
{
    const std::vector<Drawing> pages{specimen(), specimen(), specimen()};
    const std::vector<Bookmark> marks{{1, "First", 0, 0}, {2, "Within", 0, 60}, {1, "Third", 2, 0}};
    const std::string undated = pdf_of(pages, marks, {"Specimen", ""});
    CHECK(undated.starts_with("%PDF-1.5"));
    CHECK(undated.find("CreationDate") == std::string::npos);
    CHECK(count_of("/Type /Page %", undated) == 3);
    CHECK(count_of("/Title (", undated) == 4); // the file's own and three marks
    CHECK(pdf_of(pages, marks, {"Specimen", "2026-01-02T03:04:05Z"}).find("20260102030405") !=
          std::string::npos);
}

TEST_CASE("text that is too wide breaks, at any letter if need be", "[drawing]")
{
    const Extent line = extent_of({.words = "a_name_that_has_no_blank_at_all"});
    const Extent broken =
        extent_of({.words = "a_name_that_has_no_blank_at_all", .width = line.width / 2.5});
    CHECK(broken.height == Approx(3 * line.height));
    const Extent cut = extent_of(
        {.words = "a_name_that_has_no_blank_at_all", .width = line.width / 2.5, .most_lines = 1});
    CHECK(cut.height == Approx(line.height));
}

TEST_CASE("bytes that are no UTF-8 do not stop a drawing", "[drawing]")
{
    CHECK(extent_of({.words = "nose \xff\xfe left"}).width >
          extent_of({.words = "nose  left"}).width);
    const std::vector<Drawing> pages{{100, 100, [](Canvas&) {}}};
    const std::vector<Bookmark> bookmarks{{1, "nose \xff", 0, 0}};
    CHECK(pdf_of(pages, bookmarks, {"a study \xe4", ""}).starts_with("%PDF-1.5"));
}

TEST_CASE("a PNG has the pixels asked for and the colours painted", "[drawing]")
{
    const Drawing drawing{400, 250, [](Canvas& canvas) {
                              canvas.fill(path_of({0, 0, 400, 250}), {{0, 114, 178}});
                          }};
    const std::string png = png_of(drawing, 2);
    // PNG (ISO/IEC 15948): width and height are big-endian at byte 16 and 20.
    CHECK(png.substr(1, 3) == "PNG");
    CHECK(static_cast<unsigned char>(png[18]) * 256 + static_cast<unsigned char>(png[19]) == 800);
    CHECK(static_cast<unsigned char>(png[22]) * 256 + static_cast<unsigned char>(png[23]) == 500);
    const bool same_pixels = png == png_of(Raster(800, 500, {0, 114, 178}));
    CHECK(same_pixels);
}

} // namespace glim
