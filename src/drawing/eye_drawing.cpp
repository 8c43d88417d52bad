#include "drawing/eye_drawing.h"

#include "drawing/part_labels.h"
#include "drawing/picture_colours.h"
#include "drawing/picture_words.h"
#include "drawing/scale_bar.h"
#include "words/bearing_words.h"
#include "words/chart_words.h"
#include "words/look_words.h"
#include "words/numbers.h"

#include <memory>

namespace glim {

namespace {

constexpr double width = 400, height = 250;
constexpr double pixels_a_point = 2;
constexpr Rect painted_part{0, 18, width, eye_raster_height / pixels_a_point};
constexpr double below = painted_part.y + painted_part.height + 3;
constexpr double label_size = 7.5;
constexpr double scale_bar_width = 80, scale_bar_height = 23;

/// Names stand beside the lit face, not on it.
std::vector<PartLabel> labels_of(const EyeFacts& facts)
{
    std::vector<bool> free;
    free.reserve(facts.lit.samples.size());
    for (const LitKind kind : facts.lit.samples)
        free.push_back(kind == LitKind::none);
    return place_labels(facts.bodies, free, facts.names, label_size, pixels_a_point);
}

/// eye_title() in the signs of print.
std::string printed_title(const EyeFacts& facts)
{
    return label_of(facts.look) + " from " +
           typeset(bearing_words(facts.toward, speech_of(facts.look)));
}

} // namespace

const Rect eye_legend_room{2, below, width - scale_bar_width - 12, height - below};

std::vector<Swatch> eye_legend(const ViewedAreas& areas, const std::vector<std::string>& hiders)
{
    std::vector<Swatch> entries = {
        {lit_colour, {}, typeset(seen_words(areas) + " of " + area_words(areas.bare))}};
    if (is_told(areas.hidden))
        entries.push_back({mixed(white, hidden_colour, 0.35),
                           Hatch{.colour = hidden_colour, .width = 1.2, .spacing = 4},
                           hidden_by_words(typeset(area_words(areas.hidden)), hiders)});
    if (is_told(areas.own))
        entries.push_back(
            {mixed(white, own_hidden_colour, 0.35),
             Hatch{.colour = own_hidden_colour, .width = 1.2, .spacing = 4, .slant = degrees(-45)},
             typeset(area_words(areas.own)) + " by the lamp or approved parts"});
    return entries;
}

Figure eye_figure(const EyeFacts& facts, Raster raster)
{
    Figure figure;
    figure.title = eye_title(facts.look, facts.toward);
    figure.caption = eye_caption(facts.look, facts.toward, facts.areas, facts.hiders);
    figure.alt = eye_alt(facts.look, facts.toward, facts.areas, facts.hiders);
    figure.is_picture = true;
    const auto pixels = std::make_shared<const Raster>(std::move(raster));
    const auto draw = [pixels, labels = labels_of(facts),
                       legend = eye_legend(facts.areas, facts.hiders), title = printed_title(facts),
                       figures = bearing_figures(facts.toward),
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
        draw_legend(canvas, eye_legend_room, legend);
        draw_scale_bar(
            canvas, {width - scale_bar_width - 2, below, scale_bar_width, scale_bar_height}, point);
    };
    figure.drawing = {width, height, draw};
    return figure;
}

} // namespace glim
