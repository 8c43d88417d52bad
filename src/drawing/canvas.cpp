#include "drawing/canvas.h"

#include "drawing/svg_ids.h"

#include <cairo-pdf.h>
#include <cairo-svg.h>
#include <cairo.h>
#include <pango/pangocairo.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace glim {

namespace {

/// Comes with every Debian that can draw text at all, and has the glyphs that we use. Where it is
/// missing another face takes its place, and bytes differ.
constexpr const char* face = "DejaVu Sans";

constexpr double halo_width = 2.5;

template <auto Free>
struct FreeWith {
    template <class T>
    void operator()(T* p) const
    {
        Free(p);
    }
};
using CairoSurface = std::unique_ptr<cairo_surface_t, FreeWith<cairo_surface_destroy>>;
using Cairo = std::unique_ptr<cairo_t, FreeWith<cairo_destroy>>;
using Layout = std::unique_ptr<PangoLayout, FreeWith<g_object_unref>>;
using Context = std::unique_ptr<PangoContext, FreeWith<g_object_unref>>;
using FontOptions = std::unique_ptr<cairo_font_options_t, FreeWith<cairo_font_options_destroy>>;
using FontDescription =
    std::unique_ptr<PangoFontDescription, FreeWith<pango_font_description_free>>;
using Attributes = std::unique_ptr<PangoAttrList, FreeWith<pango_attr_list_unref>>;
using GlibString = std::unique_ptr<char, FreeWith<g_free>>;

/// Names of files may be no UTF-8, which neither Pango nor Cairo takes.
GlibString valid(const std::string& words)
{
    return GlibString(g_utf8_make_valid(words.data(), static_cast<gssize>(words.size())));
}

void demand(cairo_status_t status)
{
    if (status != CAIRO_STATUS_SUCCESS)
        throw std::runtime_error(std::string("drawing: ") + cairo_status_to_string(status));
}

cairo_status_t append(void* bytes, const unsigned char* data, unsigned length)
{
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

/// A point is a point, and letters stand where they would at any size: so text takes the same room
/// on every canvas.
Context text_context()
{
    Context context(pango_font_map_create_context(pango_cairo_font_map_get_default()));
    pango_cairo_context_set_resolution(context.get(), 72);
    pango_context_set_round_glyph_positions(context.get(), FALSE);
    const FontOptions options(cairo_font_options_create());
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
    pango_cairo_context_set_font_options(context.get(), options.get());
    return context;
}

PangoAlignment pango_of(Align align)
{
    switch (align) {
    case Align::left:
        return PANGO_ALIGN_LEFT;
    case Align::centre:
        return PANGO_ALIGN_CENTER;
    case Align::right:
        return PANGO_ALIGN_RIGHT;
    }
    throw std::logic_error("an alignment that is none");
}

Layout layout_of(PangoContext* context, const Text& text)
{
    Layout layout(pango_layout_new(context));
    const FontDescription font(pango_font_description_new());
    pango_font_description_set_family(font.get(), face);
    pango_font_description_set_absolute_size(font.get(), text.size * PANGO_SCALE);
    pango_font_description_set_weight(font.get(),
                                      text.bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_style(font.get(),
                                     text.italic ? PANGO_STYLE_OBLIQUE : PANGO_STYLE_NORMAL);
    pango_layout_set_font_description(layout.get(), font.get());
    const GlibString words = valid(text.words);
    pango_layout_set_text(layout.get(), words.get(), -1);
    pango_layout_set_alignment(layout.get(), pango_of(text.align));
    const Attributes attributes(pango_attr_list_new());
    pango_attr_list_insert(attributes.get(), pango_attr_insert_hyphens_new(FALSE));
    pango_layout_set_attributes(layout.get(), attributes.get());
    if (text.width) {
        pango_layout_set_width(layout.get(), static_cast<int>(*text.width * PANGO_SCALE));
        pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD_CHAR);
    }
    if (text.most_lines) {
        pango_layout_set_height(layout.get(), -*text.most_lines);
        pango_layout_set_ellipsize(layout.get(), PANGO_ELLIPSIZE_END);
    }
    return layout;
}

Extent extent_of(PangoLayout* layout, const Text& text)
{
    int width = 0, height = 0;
    pango_layout_get_size(layout, &width, &height);
    return {text.width.value_or(static_cast<double>(width) / PANGO_SCALE),
            static_cast<double>(height) / PANGO_SCALE};
}

/// From the text's left end to its anchor.
double before_anchor(Align align, double width)
{
    switch (align) {
    case Align::left:
        return 0;
    case Align::centre:
        return width / 2;
    case Align::right:
        return width;
    }
    throw std::logic_error("an alignment that is none");
}

CairoSurface image_of(const Raster& raster)
{
    CairoSurface surface(
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, raster.width, raster.height));
    demand(cairo_surface_status(surface.get()));
    unsigned char* bytes = cairo_image_surface_get_data(surface.get());
    const int stride = cairo_image_surface_get_stride(surface.get());
    for (int y = 0; y < raster.height; ++y) {
        auto* row =
            reinterpret_cast<std::uint32_t*>(bytes + static_cast<std::ptrdiff_t>(y) * stride);
        for (int x = 0; x < raster.width; ++x) {
            const Colour c = raster.at(x, y);
            row[x] = static_cast<std::uint32_t>(c.red << 16 | c.green << 8 | c.blue);
        }
    }
    cairo_surface_mark_dirty(surface.get());
    return surface;
}

std::string png_of(cairo_surface_t* surface)
{
    std::string bytes;
    demand(cairo_surface_write_to_png_stream(surface, append, &bytes));
    return bytes;
}

} // namespace

Extent extent_of(const Text& text)
{
    static const Context context = text_context();
    return extent_of(layout_of(context.get(), text).get(), text);
}

struct Canvas::Pencil {
    explicit Pencil(cairo_surface_t* surface)
        : cairo(cairo_create(surface)), context(text_context())
    {
        demand(cairo_status(cairo.get()));
        pango_cairo_update_context(cairo.get(), context.get());
    }

    void trace(const Path& path) const
    {
        cairo_new_path(cairo.get());
        for (const Path::Line& line : path.lines()) {
            cairo_new_sub_path(cairo.get());
            for (const Point2& p : line.points)
                cairo_line_to(cairo.get(), p.x(), p.y());
            if (line.closed)
                cairo_close_path(cairo.get());
        }
    }

    void use(Colour c, double opacity) const
    {
        cairo_set_source_rgba(cairo.get(), c.red / 255.0, c.green / 255.0, c.blue / 255.0, opacity);
    }

    /// With its top left corner at the origin.
    void set(PangoLayout* layout, const Text& text) const
    {
        if (text.halo) {
            cairo_move_to(cairo.get(), 0, 0);
            pango_cairo_layout_path(cairo.get(), layout);
            use(*text.halo, 1);
            cairo_set_line_width(cairo.get(), halo_width);
            cairo_set_line_join(cairo.get(), CAIRO_LINE_JOIN_ROUND);
            cairo_stroke(cairo.get());
        }
        use(text.colour, 1);
        cairo_move_to(cairo.get(), 0, 0);
        pango_cairo_show_layout(cairo.get(), layout);
    }

    /// What `draw` changes of the pencil's state is forgotten afterwards.
    template <class Draw>
    void aside(Draw draw) const
    {
        cairo_save(cairo.get());
        draw();
        cairo_restore(cairo.get());
    }

    Cairo cairo;
    Context context;
};

Canvas::Canvas(std::unique_ptr<Pencil> pencil) : pencil_(std::move(pencil)) {}
Canvas::~Canvas() = default;

void Canvas::fill(const Path& path, const Fill& fill)
{
    pencil_->trace(path);
    pencil_->use(fill.colour, fill.opacity);
    cairo_fill(pencil_->cairo.get());
}

void Canvas::stroke(const Path& path, const Pen& pen)
{
    cairo_t* cairo = pencil_->cairo.get();
    pencil_->trace(path);
    pencil_->use(pen.colour, pen.opacity);
    cairo_set_line_width(cairo, pen.width);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
    cairo_set_dash(cairo, pen.dashes.data(), static_cast<int>(pen.dashes.size()), 0);
    cairo_stroke(cairo);
}

void Canvas::hatch(const Path& path, const Hatch& hatch)
{
    const Path lines = parallels_over(path, hatch.spacing, hatch.slant);
    clipped(path, [&] { stroke(lines, {hatch.colour, hatch.width, {}, hatch.opacity}); });
}

void Canvas::image(const Raster& raster, const Rect& where, Grain grain)
{
    if (raster.pixels.empty())
        return;
    cairo_t* cairo = pencil_->cairo.get();
    const CairoSurface surface = image_of(raster);
    pencil_->aside([&] {
        cairo_translate(cairo, where.x, where.y);
        cairo_scale(cairo, where.width / raster.width, where.height / raster.height);
        cairo_set_source_surface(cairo, surface.get(), 0, 0);
        cairo_pattern_t* pattern = cairo_get_source(cairo);
        cairo_pattern_set_filter(pattern,
                                 grain == Grain::sharp ? CAIRO_FILTER_NEAREST : CAIRO_FILTER_GOOD);
        // Else the rim would blend with the nothing around it.
        cairo_pattern_set_extend(pattern, CAIRO_EXTEND_PAD);
        cairo_rectangle(cairo, 0, 0, raster.width, raster.height);
        cairo_fill(cairo);
    });
}

Extent Canvas::text(const Point2& at, const Text& text)
{
    const Layout layout = layout_of(pencil_->context.get(), text);
    const Extent extent = extent_of(layout.get(), text);
    pencil_->aside([&] {
        cairo_translate(pencil_->cairo.get(), at.x() - before_anchor(text.align, extent.width),
                        at.y());
        pencil_->set(layout.get(), text);
    });
    return extent;
}

Extent Canvas::upward_text(const Point2& at, const Text& text)
{
    const Layout layout = layout_of(pencil_->context.get(), text);
    const Extent extent = extent_of(layout.get(), text);
    pencil_->aside([&] {
        cairo_t* cairo = pencil_->cairo.get();
        cairo_translate(cairo, at.x(), at.y() + extent.width / 2);
        cairo_rotate(cairo, -std::acos(0.0)); // a quarter turn
        pencil_->set(layout.get(), text);
    });
    return extent;
}

void Canvas::clipped(const Path& path, const std::function<void()>& draw)
{
    pencil_->aside([&] {
        pencil_->trace(path);
        cairo_clip(pencil_->cairo.get());
        draw();
    });
}

void Canvas::place(const Drawing& drawing, const Rect& where)
{
    const double scale = std::min(where.width / drawing.width, where.height / drawing.height);
    pencil_->aside([&] {
        cairo_t* cairo = pencil_->cairo.get();
        cairo_translate(cairo, where.x + (where.width - scale * drawing.width) / 2, where.y);
        cairo_scale(cairo, scale, scale);
        drawing.draw(*this);
    });
}

/// The one that may make canvases: for surfaces that this file knows.
struct CanvasMaker {
    static void draw_on(cairo_surface_t* surface, const Drawing& drawing, double scale)
    {
        auto pencil = std::make_unique<Canvas::Pencil>(surface);
        cairo_t* cairo = pencil->cairo.get();
        cairo_scale(cairo, scale, scale);
        Canvas canvas(std::move(pencil));
        drawing.draw(canvas);
        demand(cairo_status(cairo));
    }
};

std::string svg_of(const Drawing& drawing)
{
    std::string bytes;
    const CairoSurface surface(
        cairo_svg_surface_create_for_stream(append, &bytes, drawing.width, drawing.height));
    CanvasMaker::draw_on(surface.get(), drawing, 1);
    cairo_surface_finish(surface.get());
    demand(cairo_surface_status(surface.get()));
    return with_ids_counted_from_one(bytes);
}

std::string png_of(const Drawing& drawing, double pixels_per_point)
{
    const auto pixels = [&](double points) {
        constexpr double rounding = 1e-9; // 800 pixels are no 801
        return static_cast<int>(std::ceil(points * pixels_per_point - rounding));
    };
    const CairoSurface surface =
        image_of(Raster(pixels(drawing.width), pixels(drawing.height), white));
    CanvasMaker::draw_on(surface.get(), drawing, pixels_per_point);
    return png_of(surface.get());
}

std::string png_of(const Raster& raster) { return png_of(image_of(raster).get()); }

namespace {

/// With an empty date Cairo leaves the day out.
void tell(cairo_surface_t* pdf, const PdfFacts& facts)
{
    cairo_pdf_surface_restrict_to_version(pdf, CAIRO_PDF_VERSION_1_5);
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_TITLE, valid(facts.title).get());
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_CREATOR, "cornerglim");
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_CREATE_DATE, facts.date.c_str());
}

void add_bookmarks(cairo_surface_t* pdf, std::span<const Bookmark> bookmarks)
{
    std::vector<int> above{CAIRO_PDF_OUTLINE_ROOT};
    for (const Bookmark& b : bookmarks) {
        above.resize(static_cast<std::size_t>(b.level));
        const std::string target = "page=" + std::to_string(b.page + 1) + " pos=[0 " +
                                   std::to_string(static_cast<int>(b.y)) + "]";
        above.push_back(cairo_pdf_surface_add_outline(pdf, above.back(), valid(b.title).get(),
                                                      target.c_str(), CAIRO_PDF_OUTLINE_FLAG_OPEN));
    }
}

} // namespace

std::string pdf_of(std::span<const Drawing> pages, std::span<const Bookmark> bookmarks,
                   const PdfFacts& facts)
{
    std::string bytes;
    const CairoSurface surface(cairo_pdf_surface_create_for_stream(append, &bytes, 1, 1));
    tell(surface.get(), facts);
    for (const Drawing& page : pages) {
        cairo_pdf_surface_set_size(surface.get(), page.width, page.height);
        CanvasMaker::draw_on(surface.get(), page, 1);
        cairo_surface_show_page(surface.get());
    }
    add_bookmarks(surface.get(), bookmarks);
    cairo_surface_finish(surface.get());
    demand(cairo_surface_status(surface.get()));
    return bytes;
}

} // namespace glim
