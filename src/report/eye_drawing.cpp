#include "report/eye_drawing.h"

#include "report/bearing_words.h"
#include "report/numbers.h"
#include "report/part_labels.h"
#include "report/picture_colours.h"
#include "report/picture_legend.h"
#include "report/picture_words.h"
#include "report/scale_bar.h"

#include <memory>

namespace glim {

namespace {

constexpr double width = 400, height = 250;
constexpr double pixels_a_point = 2;
constexpr Rect painted_part{0, 20, width, eye_raster_height / pixels_a_point};
constexpr double label_size = 7.5;
constexpr double scale_bar_width = 80;

/// Names stand beside the lit face, not on it.
std::vector<PartLabel> labels_of(const EyeFacts& facts)
{
    std::vector<bool> free;
    free.reserve(facts.lit.samples.size());
    for (const LitKind kind : facts.lit.samples)
        free.push_back(kind == LitKind::none);
    return place_labels(facts.bodies, free, facts.names, label_size, pixels_a_point);
}

std::vector<Swatch> legend_of(const EyeFacts& facts)
{
    std::vector<Swatch> entries = {
        {lit_colour, {}, seen_words(facts.areas) + " of " + area_words(facts.areas.bare)}};
    if (facts.areas.hidden > Area())
        entries.push_back({mixed(white, hidden_colour, 0.35),
                           Hatch{.colour = hidden_colour, .width = 1.2, .spacing = 4},
                           hidden_by_words(facts.areas.hidden, facts.hiders)});
    if (facts.areas.own > Area())
        entries.push_back(
            {mixed(white, own_hidden_colour, 0.35),
             Hatch{.colour = own_hidden_colour, .width = 1.2, .spacing = 4, .slant = degrees(-45)},
             area_words(facts.areas.own) + " by the lamp or approved parts"});
    return entries;
}

} // namespace

Figure eye_figure(const EyeFacts& facts, Raster raster)
{
    Figure figure;
    figure.title = eye_title(facts.look, facts.toward);
    figure.caption = eye_caption(facts.look, facts.toward, facts.areas, facts.hiders);
    figure.alt = eye_alt(facts.look, facts.toward, facts.areas, facts.hiders);
    figure.is_picture = true;
    const auto pixels = std::make_shared<const Raster>(std::move(raster));
    const auto draw = [pixels, labels = labels_of(facts), legend = legend_of(facts),
                       title = figure.title, figures = bearing_figures(facts.toward),
                       point = pixels_a_point * facts.bodies.frame.pixel](Canvas& canvas) {
        draw_title(canvas, {0, 0, width, painted_part.y}, title, figures);
        canvas.image(*pixels, painted_part);
        draw_border(canvas, painted_part);
        for (const PartLabel& label : labels) {
            const Text text{
                .words = label.words, .size = label_size, .align = Align::centre, .halo = white};
            const Point2 middle = label.centre / pixels_a_point;
            canvas.text({middle.x(), painted_part.y + middle.y() - extent_of(text).height / 2},
                        text);
        }
        const double below = painted_part.bottom() + 3;
        draw_legend(canvas, {2, below, width - scale_bar_width - 12, height - below}, legend);
        draw_scale_bar(canvas,
                       {width - scale_bar_width - 2, below, scale_bar_width, height - below - 4},
                       point);
    };
    figure.drawing = {width, height, draw};
    return figure;
}

} // namespace glim
