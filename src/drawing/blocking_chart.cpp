#include "drawing/blocking_chart.h"

#include "drawing/label_places.h"
#include "drawing/map_chart.h"
#include "drawing/node_cells.h"
#include "words/chart_words.h"
#include "words/numbers.h"

#include <array>

namespace glim {

namespace {

/// A surface's looks: quiet enough for letters and lines to be read on them.
struct Look {
    Colour colour;
    Angle slant;
    double spacing; ///< 0: no lines
};
constexpr std::array looks{
    Look{{127, 166, 201}, degrees(45), 6},  Look{{226, 179, 116}, degrees(135), 6},
    Look{{160, 193, 158}, degrees(0), 5},   Look{{201, 148, 168}, degrees(90), 5},
    Look{{214, 205, 140}, degrees(45), 3},  Look{{147, 141, 184}, degrees(135), 3},
    Look{{176, 152, 128}, degrees(0), 2.5}, Look{{120, 150, 150}, degrees(90), 2.5},
};
/// For all surfaces beyond those.
constexpr Look rest{{190, 190, 190}, degrees(70), 8};
constexpr Colour nothing_hidden{252, 252, 252};
constexpr double letter_size = 9;

const Look& look_of(std::size_t kind) { return kind < looks.size() ? looks[kind] : rest; }

std::string letter_of(std::size_t kind) { return std::string(1, static_cast<char>('A' + kind)); }

void draw_lines(Canvas& canvas, const Path& path, const Look& look)
{
    canvas.hatch(path,
                 {.width = 0.4, .spacing = look.spacing, .slant = look.slant, .opacity = 0.55});
}

/// What the map needs, by value.
struct Shown {
    std::shared_ptr<const ChartSubject> subject;
    std::vector<std::optional<std::size_t>> kinds;  ///< one a node of the grid
    std::vector<std::vector<BearingLine>> outlines; ///< one a kind
    std::vector<NodePatch> patches;
    std::vector<std::size_t> directions; ///< one a kind: in how many it takes most
};

Shown shown_of(std::shared_ptr<const ChartSubject> subject, const LampVerdict& verdict,
               const BlockingMap& blocking)
{
    Shown shown{.subject = std::move(subject),
                .kinds = {},
                .outlines = {},
                .patches = {},
                .directions = {}};
    const std::size_t count = std::min(blocking.surfaces.size(), looks.size() + 1);
    shown.directions.resize(count);
    for (std::size_t i = 0; i < verdict.directions.size(); ++i) {
        if (verdict.directions[i].between)
            continue;
        shown.kinds.push_back(blocking.most[i]);
        if (auto& kind = shown.kinds.back()) {
            *kind = std::min(*kind, looks.size());
            ++shown.directions[*kind];
        }
    }
    const FieldGrid& grid = shown.subject->figures.grid;
    for (std::size_t kind = 0; kind < count; ++kind) {
        std::vector<bool> chosen;
        for (const auto& k : shown.kinds)
            chosen.push_back(k == kind);
        shown.outlines.push_back(outline_of_nodes(grid, chosen));
    }
    shown.patches = patches_of(grid, shown.kinds);
    return shown;
}

void draw_surfaces(Canvas& canvas, const MapFrame& frame, const Shown& shown)
{
    for (std::size_t kind = 0; kind < shown.outlines.size(); ++kind) {
        const Path path = path_on(frame, shown.outlines[kind]);
        draw_lines(canvas, path, look_of(kind));
        canvas.stroke(path, {.colour = {70, 70, 70}, .width = 0.5});
    }
}

/// In the middle of patches, the deepest first, where there is room.
void draw_letters(Canvas& canvas, const MapFrame& frame, const Shown& shown)
{
    std::vector<NodePatch> patches = shown.patches;
    std::stable_sort(patches.begin(), patches.end(),
                     [](const auto& a, const auto& b) { return a.depth > b.depth; });
    LabelPlaces places(frame.plot);
    std::vector<bool> named(shown.outlines.size());
    for (const NodePatch& p : patches) {
        const Text letter{
            .words = letter_of(p.kind), .size = letter_size, .bold = true, .halo = white};
        const Extent size = extent_of(letter);
        // A patch of one direction is not worth a letter where the surface has one already.
        if (named[p.kind] && p.depth < 2)
            continue;
        const Point2 middle = frame.point_of(p.middle);
        const std::array at{Point2(middle - Point2(size.width / 2, size.height / 2))};
        if (places.first_free(at, size)) {
            canvas.text(at[0], letter);
            named[p.kind] = true;
        }
    }
}

std::vector<LegendEntry> entries_of(const Shown& shown, const std::vector<std::string>& names)
{
    std::vector<LegendEntry> entries;
    for (std::size_t kind = 0; kind < shown.outlines.size(); ++kind)
        entries.push_back({[kind](Canvas& canvas, const Rect& r) {
                               canvas.fill(path_of(r), {look_of(kind).colour});
                               draw_lines(canvas, path_of(r), look_of(kind));
                               canvas.stroke(path_of(r), {.colour = {70, 70, 70}, .width = 0.5});
                               canvas.text({r.centre().x(), r.y - 0.5}, {.words = letter_of(kind),
                                                                         .size = 8,
                                                                         .bold = true,
                                                                         .align = Align::centre,
                                                                         .halo = white});
                           },
                           kind < looks.size()
                               ? names[kind]
                               : counted(names.size() - looks.size(), "other surface")});
    entries.push_back({[](Canvas& canvas, const Rect& r) {
                           canvas.fill(path_of(r), {nothing_hidden});
                           canvas.stroke(path_of(r), {.colour = {70, 70, 70}, .width = 0.5});
                       },
                       typeset("less than " + area_words(least_mapped) + " hidden")});
    return entries;
}

std::string found_words(const Shown& shown, const std::vector<std::string>& names)
{
    if (shown.directions.empty())
        return "nothing is in the way in any direction";
    std::string words;
    for (std::size_t kind = 0; kind < shown.directions.size(); ++kind)
        words += (kind == 0 ? "" : ", ") +
                 (kind < looks.size() ? names[kind] : std::string("other surfaces")) + " in " +
                 std::to_string(shown.directions[kind]);
    return words + " of " + counted(shown.kinds.size(), "direction");
}

} // namespace

Figure blocking_chart(const std::shared_ptr<const ChartSubject>& subject,
                      const LampVerdict& verdict, const BlockingMap& blocking,
                      const std::vector<std::string>& names)
{
    const auto shown = std::make_shared<const Shown>(shown_of(subject, verdict, blocking));
    MapColours colours;
    colours.painter = [shown](const Bearing& b) -> std::optional<Colour> {
        const auto node = shown->subject->figures.grid.nearest_to(b);
        if (!node)
            return std::nullopt;
        const auto& kind = shown->kinds[*node];
        return kind ? look_of(*kind).colour : nothing_hidden;
    };
    colours.on_top = [shown](Canvas& canvas, const MapFrame& frame) {
        draw_surfaces(canvas, frame, *shown);
    };
    colours.letters = [shown](Canvas& canvas, const MapFrame& frame) {
        draw_letters(canvas, frame, *shown);
    };
    colours.entries = entries_of(*shown, names);
    colours.marks_outcome = false;
    Figure f;
    f.title = "What hides the lamp most";
    f.caption =
        "Which surface takes most of the area of " + subject->lamp +
        " in each direction, parts approved with the lamp included; white where less than " +
        area_words(least_mapped) + " is hidden. Most often: " + found_words(*shown, names) + ".";
    f.alt = "Map of the surface that takes most of the lamp's area in each direction: " +
            found_words(*shown, names) + ".";
    f.drawing = map_chart(subject, plane_frame(subject->field, subject->speech, map_room), colours);
    return f;
}

} // namespace glim
