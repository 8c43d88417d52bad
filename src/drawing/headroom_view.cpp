#include "drawing/headroom_view.h"

#include "drawing/headroom_colours.h"
#include "drawing/numbered_place.h"
#include "drawing/paint_picture.h"
#include "drawing/picture_colours.h"
#include "drawing/picture_legend.h"
#include "drawing/scale_bar.h"
#include "drawing/subject_eye.h"
#include "remedy/way_to_space.h"
#include "words/chart_words.h"
#include "words/headroom_words.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <memory>

namespace glim {

namespace {

constexpr double width = 400, height = 250;
constexpr double pixels_a_point = 2;
constexpr Rect painted_part{0, 20, width, 200};
constexpr double scale_bar_width = 70;

/// A picture is at least so wide, that the corner can be made out.
constexpr double least_width_mm = 700;
/// What must be seen fills at most this share of the picture.
constexpr double share_of_subject = 0.85;
/// So many of the tightest surfaces are numbered.
constexpr std::size_t most_numbers = 6;
/// A place counts as seen where the eye meets something no farther before it than this.
constexpr double seen_within_mm = 3;

/// Everything in the picture: the lamps' faces, then the surfaces.
struct Drawn {
    std::vector<TriangleMesh> lit; ///< vehicle frame
    std::vector<PlacedMesh> meshes;
    Point origin;
    Caster caster;
};

std::vector<TriangleMesh> lit_faces(const KeepClear& found)
{
    std::vector<TriangleMesh> lit;
    for (const ClearSpace& space : found.asked)
        lit.push_back(space.frame.out_of(space.lit));
    return lit;
}

Drawn drawn_of(const std::vector<Headroom>& headroom, const KeepClear& found)
{
    std::vector<TriangleMesh> lit = lit_faces(found);
    const Point origin = box_of(lit[headroom.front().space]).centre();
    std::vector<TriangleMesh> shifted;
    std::vector<PlacedMesh> meshes;
    const auto add = [&](const TriangleMesh& mesh) {
        shifted.push_back(mesh);
        for (Point& p : shifted.back().points)
            p -= origin;
        meshes.push_back({&mesh, Placement()});
    };
    for (const TriangleMesh& mesh : lit)
        add(mesh);
    for (const Headroom& h : headroom)
        add(h.mesh);
    return {std::move(lit), std::move(meshes), origin, Caster::flat(shifted)};
}

/// What the picture is about: facets on the tightest place's side that have less than a limit.
std::vector<SubjectPatch> patches_below(const std::vector<Headroom>& headroom, Length limit,
                                        const Vehicle& vehicle)
{
    const Length side = vehicle.lateral(headroom.front().tightest);
    std::vector<SubjectPatch> patches;
    for (const Headroom& h : headroom)
        for (std::size_t f = 0; f < h.mesh.facets.size(); ++f) {
            const Facet& facet = h.mesh.facets[f];
            const bool is_tight = std::any_of(
                facet.begin(), facet.end(), [&](std::uint32_t p) { return h.figures[p] < limit; });
            const Point middle =
                (h.mesh.corner(f, 0) + h.mesh.corner(f, 1) + h.mesh.corner(f, 2)) / 3;
            if (!is_tight || in_mm2(side * vehicle.lateral(middle)) < 0)
                continue;
            const Vector area = area_vector(h.mesh, f);
            patches.push_back({middle, area.normalized(), square_millimetres(area.norm())});
        }
    return patches;
}

std::vector<SubjectPatch> subject_of(const std::vector<Headroom>& headroom, const Vehicle& vehicle)
{
    for (const Length limit : {headroom_levels[4], headroom_levels[5], farthest_way_in,
                               farthest_way_in + millimetres(1)}) {
        std::vector<SubjectPatch> patches = patches_below(headroom, limit, vehicle);
        if (!patches.empty())
            return patches;
    }
    return {};
}

PictureFrame frame_of(const std::vector<SubjectPatch>& subject, const TriangleMesh& lit,
                      const Drawn& drawn, const Vehicle& vehicle, Side side)
{
    const LampFrame axes{vehicle.forward, vehicle.outboard(side), vehicle.up};
    PictureFrame frame = picture_frame(eye_on(subject, drawn.caster, drawn.origin, axes),
                                       vehicle.up, vehicle.forward);
    frame.width = static_cast<std::uint32_t>(painted_part.width * pixels_a_point);
    frame.height = static_cast<std::uint32_t>(painted_part.height * pixels_a_point);
    Box box;
    const auto add = [&](const Point& p) {
        box.add({frame.across.dot(p), frame.up.dot(p), frame.toward.dot(p)});
    };
    for (const SubjectPatch& patch : subject)
        add(patch.centre);
    for (const Point& p : lit.points)
        add(p);
    const Point centre = box.centre();
    frame.centre =
        centre.x() * frame.across + centre.y() * frame.up + centre.z() * frame.toward.vector();
    const double wanted =
        std::max(box.size().x(), box.size().y() * frame.width / frame.height) / share_of_subject;
    frame.pixel = millimetres(std::max(wanted, least_width_mm) / frame.width);
    return frame;
}

/// Where a sample's body is, vehicle frame.
Point place_of(const PictureFrame& frame, const BodySample& sample, std::size_t at)
{
    const std::size_t columns = std::size_t{frame.width} * samples_a_side;
    const std::size_t row = at / columns;
    const double x = (static_cast<double>(at % columns) + 0.5) / samples_a_side;
    const double y = (static_cast<double>(row) + 0.5) / samples_a_side;
    const double pixel = in_mm(frame.pixel);
    return frame.centre + (x - frame.width / 2.0) * pixel * frame.across +
           (frame.height / 2.0 - y) * pixel * frame.up +
           static_cast<double>(sample.depth) * frame.toward.vector();
}

/// Straight between the facet's corners.
Length figure_at(const Headroom& h, std::uint32_t f, const Point& p)
{
    const Vector normal = area_vector(h.mesh, f);
    const double size = normal.squaredNorm();
    double sum = 0, figure = 0;
    for (int i = 0; i < 3; ++i) {
        const Vector a = h.mesh.corner(f, (i + 1) % 3) - p;
        const Vector b = h.mesh.corner(f, (i + 2) % 3) - p;
        const double share = size > 0 ? std::max(0.0, normal.dot(a.cross(b)) / size) : 1;
        sum += share;
        figure += share * in_mm(h.figures[h.mesh.facets[f][i]]);
    }
    return millimetres(figure / sum);
}

struct NumberedPlace {
    Point2 at; ///< points of the drawing
    std::string number;
};

std::vector<NumberedPlace> numbers_of(const std::vector<Headroom>& headroom,
                                      const BodyPicture& bodies)
{
    const PictureFrame& frame = bodies.frame;
    std::vector<NumberedPlace> numbers;
    constexpr double rim = 8; // rings stand wholly within
    constexpr Rect room{painted_part.x + rim, painted_part.y + rim, painted_part.width - 2 * rim,
                        painted_part.height - 2 * rim};
    const std::vector<HeadroomRow> rows = headroom_rows(headroom);
    for (std::size_t i = 0; i < std::min(rows.size(), most_numbers); ++i) {
        const Headroom& h = *rows[i].headroom;
        if (!h.least)
            continue;
        const Point2 pixel = frame.place_of(h.tightest);
        const Point2 at = pixel / pixels_a_point + Point2(painted_part.x, painted_part.y);
        if (at.x() < room.x || at.x() > room.right() || at.y() < room.y || at.y() > room.bottom())
            continue;
        const auto column = static_cast<std::size_t>(pixel.x() * samples_a_side);
        const auto row = static_cast<std::size_t>(pixel.y() * samples_a_side);
        const std::size_t columns = std::size_t{frame.width} * samples_a_side;
        const BodySample& sample = bodies.samples[row * columns + column];
        if (sample.any() && sample.depth - in_mm(frame.depth_of(h.tightest)) > seen_within_mm)
            continue;
        numbers.push_back({at, std::to_string(i + 1)});
    }
    return numbers;
}

struct Content {
    PictureFrame frame;
    Raster raster;
    std::string title;
    std::vector<NumberedPlace> numbers;
};

void draw(Canvas& canvas, const Content& content)
{
    draw_title(canvas, {0, 0, width, painted_part.y}, content.title, "");
    canvas.image(content.raster, painted_part);
    draw_border(canvas, painted_part);
    for (std::size_t i = content.numbers.size(); i-- > 0;)
        draw_numbered_place(canvas, content.numbers[i].at, content.numbers[i].number);
    const double below = painted_part.bottom() + 1.5;
    std::vector<Swatch> entries{{lit_colour, {}, "lamp"}};
    for (const HeadroomBand& band : headroom_bands())
        entries.push_back({band.colour, {}, band.words});
    entries[1].hatch = Hatch{};
    draw_legend(canvas, {2, below, width - scale_bar_width - 12, 26}, entries);
    draw_scale_bar(canvas,
                   {width - scale_bar_width - 2, below, scale_bar_width, height - below - 3},
                   pixels_a_point * content.frame.pixel);
}

constexpr std::string_view caption =
    "How far each place may come out along its normal before it meets a space that has to stay "
    "empty; hatched: already inside. Numbers stand at the tightest places, in the order of the "
    "table. Clear covers are not drawn.";

/// The colour of a sample.
class Colours {
public:
    Colours(const std::vector<Headroom>& headroom, std::size_t lamps, const PictureFrame& frame)
        : headroom_(headroom), lamps_(lamps), frame_(frame)
    {
    }

    Colour of(const BodySample& sample, std::size_t at) const
    {
        if (!sample.any())
            return nothing_there;
        if (sample.part < lamps_)
            return in_light(lit_colour, sample.light);
        const Length figure =
            figure_at(headroom_[sample.part - lamps_], sample.facet, place_of(frame_, sample, at));
        const Colour colour = headroom_band(figure).colour;
        return in_light(figure < Length() && is_hatched(frame_, at)
                            ? mixed(colour, black, hatch_darkness)
                            : colour,
                        sample.light);
    }

private:
    static constexpr double hatch_darkness = 0.45;
    const std::vector<Headroom>& headroom_;
    std::size_t lamps_;
    const PictureFrame& frame_;
};

} // namespace

Figure headroom_view(const std::vector<Headroom>& headroom, const KeepClear& found,
                     const Study& study, const Workers& workers)
{
    const Drawn drawn = drawn_of(headroom, found);
    const std::size_t nearest = headroom.front().space;
    const PictureFrame frame = frame_of(subject_of(headroom, study.vehicle), drawn.lit[nearest],
                                        drawn, study.vehicle, found.spaces[nearest].side);
    const BodyPicture bodies =
        body_picture({drawn.caster, drawn.meshes, drawn.origin}, frame, workers);
    const Colours colours(headroom, drawn.lit.size(), frame);
    const Raster raster = painted(
        frame, [&](std::size_t at) { return colours.of(bodies.samples[at], at); },
        rims_of(bodies, std::vector<bool>(drawn.meshes.size()), workers), workers);
    const auto content = std::make_shared<Content>(
        Content{frame, raster, "Headroom to the space that has to stay empty, mm",
                numbers_of(headroom, bodies)});
    return {.drawing = {width, height, [content](Canvas& canvas) { draw(canvas, *content); }},
            .title = content->title,
            .caption = std::string(caption),
            .alt = std::string(caption) + " " + headroom_sentence(headroom, study),
            .is_picture = true};
}

} // namespace glim
