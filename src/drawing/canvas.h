#pragma once

#include "drawing/path.h"
#include "drawing/raster.h"
#include "units/units.h"

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>

namespace glim {

// One canvas for charts, pictures and pages, whatever becomes of them: SVG, PNG or PDF. All lengths
// are in points (1/72 inch), x to the right and y down from the top left corner. The same drawing
// gives the same bytes with the same libraries and fonts. To be used by one thread.

struct Fill {
    Colour colour = black;
    double opacity = 1;
};

struct Pen {
    Colour colour = black;
    double width = 0.75;
    std::vector<double> dashes = {}; ///< drawn, left out, drawn ...; none: a whole line
    double opacity = 1;
};

/// Parallel lines, so that what is filled is told apart without colour.
struct Hatch {
    Colour colour = black;
    double width = 0.5;
    double spacing = 4;        ///< between lines, across them
    Angle slant = degrees(45); ///< rising to the right
    double opacity = 1;
};

enum class Align { left, centre, right };

/// Text to be set, in the sans-serif face of every drawing. UTF-8; bytes that are none become
/// U+FFFD.
struct Text {
    std::string words;
    double size = 8.5;
    bool bold = false;
    bool italic = false;
    Colour colour = black;
    Align align = Align::left;          ///< of the anchor, and of the lines to each other
    std::optional<double> width = {};   ///< longer lines break, in long names at any letter
    std::optional<int> most_lines = {}; ///< with `width`: what is too long ends in an ellipsis
    /// Lies below it, so that lines and pictures do not make it unreadable.
    std::optional<Colour> halo = {};
};

struct Extent {
    double width = 0, height = 0;
};

enum class Grain {
    smooth, ///< pixels blend where the picture is enlarged
    sharp   ///< pixels are squares
};

/// What the text will take when it is set, on whatever canvas; with `width` the width asked.
Extent extent_of(const Text& text);

struct Drawing;

class Canvas {
public:
    ~Canvas();
    Canvas(const Canvas&) = delete;
    Canvas& operator=(const Canvas&) = delete;

    void fill(const Path& path, const Fill& fill);
    void stroke(const Path& path, const Pen& pen);
    void hatch(const Path& path, const Hatch& hatch);
    void image(const Raster& raster, const Rect& where, Grain grain = Grain::smooth);

    /// `at` is the top of the first line, at the text's left end, middle or right end.
    Extent text(const Point2& at, const Text& text);
    /// Read from below: `at` is the middle of its left side, before it was turned its top.
    Extent upward_text(const Point2& at, const Text& text);

    void clipped(const Path& path, const std::function<void()>& draw);
    /// Another drawing, scaled to fit into `where`, at its top and in its middle.
    void place(const Drawing& drawing, const Rect& where);

private:
    friend struct CanvasMaker;
    struct Pencil;
    explicit Canvas(std::unique_ptr<Pencil> pencil);
    std::unique_ptr<Pencil> pencil_;
};

/// Something to be drawn on a canvas of this size.
struct Drawing {
    double width = 0, height = 0;
    std::function<void(Canvas&)> draw;
};

/// An SVG file. Ids in it are those of every other one: embed it as an image, never inline. Text is
/// drawn as shapes.
std::string svg_of(const Drawing& drawing);

/// A PNG file of so many pixels a point, rounded up to whole pixels, on white.
std::string png_of(const Drawing& drawing, double pixels_per_point = 2);
/// The very pixels.
std::string png_of(const Raster& raster);

struct Bookmark {
    int level = 1; ///< 1 for a chapter; at most one deeper than the one before
    std::string title;
    std::size_t page = 0; ///< place in the pages
    double y = 0;         ///< where on it
};

struct PdfFacts {
    std::string title;
    std::string date; ///< ISO 8601; empty: the file bears no date
};

/// A PDF 1.5 file, a page a drawing, fonts embedded.
std::string pdf_of(std::span<const Drawing> pages, std::span<const Bookmark> bookmarks,
                   const PdfFacts& facts);

} // namespace glim
