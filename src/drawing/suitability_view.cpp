#include "drawing/suitability_view.h"

#include "drawing/colour_map.h"
#include "drawing/numbered_place.h"
#include "drawing/paint_picture.h"
#include "drawing/picture_colours.h"
#include "drawing/picture_legend.h"
#include "drawing/picture_rims.h"
#include "drawing/scale_bar.h"
#include "drawing/subject_eye.h"
#include "words/chart_words.h"
#include "words/numbers.h"

#include <algorithm>
#include <memory>

namespace glim {

namespace {

constexpr double width = 400, height = 250;
constexpr double pixels_a_point = 2;
constexpr Rect painted_part{0, 20, width, 200};
constexpr double scale_bar_width = 70;

constexpr Colour carrier_colour{226, 226, 230}; ///< may carry a lamp, which does not answer alone
constexpr Colour partly_colour{186, 190, 198};  ///< one that serves some failing directions

/// A picture is at least so wide, that the corner can be made out.
constexpr double least_width_mm = 900;
/// What must be seen fills at most this share of the picture.
constexpr double share_of_subject = 0.8;

/// What bodies of the picture stand where.
std::vector<Standing> drawn_surfaces(const Study& study)
{
    std::vector<Standing> drawn;
    for (const SurfaceId id : study.surfaces.ids()) {
        const Surface& s = study.surfaces[id];
        if (s.role == Role::clear || s.role == Role::ignored || s.lit_part_of)
            continue;
        drawn.push_back({id, false});
        if (s.mirror == MirrorRule::yes)
            drawn.push_back({id, true});
    }
    return drawn;
}

/// Facets that a lamp may go to; where none answers alone, those that serve something.
std::vector<const CandidateFacet*> subject_of(const AddedLampAnswer& answer)
{
    std::vector<const CandidateFacet*> subject;
    const bool any_alone = answer.counts.alone > 0;
    for (const CandidateFacet& c : answer.candidates)
        if (any_alone ? c.alone.has_value() : c.serves > 0)
            subject.push_back(&c);
    if (subject.empty())
        for (const CandidateFacet& c : answer.candidates)
            subject.push_back(&c);
    return subject;
}

Direction best_eye(const std::vector<const CandidateFacet*>& subject, const AddedLampAnswer& answer,
                   const Session& session, const Caster& caster)
{
    const Vehicle& vehicle = session.study().vehicle;
    std::vector<SubjectPatch> patches;
    patches.reserve(subject.size());
    for (const CandidateFacet* c : subject)
        patches.push_back({c->centre, c->normal, c->size});
    return eye_on(patches, caster, session.scene().origin(),
                  {vehicle.forward, vehicle.outboard(answer.lamp.side), vehicle.up});
}

PictureFrame frame_of(const std::vector<const CandidateFacet*>& subject,
                      const AddedLampAnswer& answer, const Session& session, const Caster& caster)
{
    const Vehicle& vehicle = session.study().vehicle;
    PictureFrame frame =
        picture_frame(best_eye(subject, answer, session, caster), vehicle.up, vehicle.forward);
    frame.width = static_cast<std::uint32_t>(painted_part.width * pixels_a_point);
    frame.height = static_cast<std::uint32_t>(painted_part.height * pixels_a_point);
    Box box;
    const auto add = [&](const Point& p) {
        box.add({frame.across.dot(p), frame.up.dot(p), frame.toward.dot(p)});
    };
    for (const CandidateFacet* c : subject)
        add(c->centre);
    for (const Point& p :
         session.scene().lit_surface_of({answer.helped, false, Obstacles::all}).points)
        add(p);
    const Point centre = box.centre();
    frame.centre =
        centre.x() * frame.across + centre.y() * frame.up + centre.z() * frame.toward.vector();
    const double wanted =
        std::max(box.size().x(), box.size().y() * frame.width / frame.height) / share_of_subject;
    frame.pixel = millimetres(std::max(wanted, least_width_mm) / frame.width);
    return frame;
}

/// From which lens area to which the colours run: the largest tenth is one colour.
struct AreaRange {
    Area least, most;

    double share(Area area) const
    {
        return most > least ? std::clamp((area - least) / (most - least), 0.0, 1.0) : 0;
    }
    /// The smaller, the lighter.
    Colour colour(Area area) const { return cividis(1 - share(area)); }
};

AreaRange range_of(const AddedLampAnswer& answer)
{
    std::vector<Area> areas;
    for (const CandidateFacet& c : answer.candidates)
        if (c.alone)
            areas.push_back(*c.alone);
    if (areas.empty())
        return {};
    std::sort(areas.begin(), areas.end());
    return {areas.front(), areas[(areas.size() - 1) * 9 / 10]};
}

/// The colours of the bodies, facet by facet where they may carry the lamp.
class Colours {
public:
    Colours(const std::vector<Standing>& drawn, const AddedLampAnswer& answer, const Study& study,
            const AreaRange& range)
    {
        const std::vector<SurfaceId>& lit = study.lamps[answer.helped].emits;
        for (const Standing& s : drawn) {
            const bool shines = !s.twin && std::any_of(lit.begin(), lit.end(), [&](SurfaceId l) {
                return study.surfaces[l].lit_part_of.value_or(l) == s.surface;
            });
            plain_.push_back(shines ? lit_colour : mixed(quiet_colour(s.surface), white, paleness));
            facets_.emplace_back();
            if (!s.twin)
                facets_.back() = painted_facets(s.surface, answer, study, range);
        }
    }

    Colour of(const BodySample& sample) const
    {
        if (!sample.any())
            return nothing_there;
        const auto& facets = facets_[sample.part];
        return in_light(facets.empty() ? plain_[sample.part] : facets[sample.facet], sample.light);
    }

private:
    /// So much lighter than in other pictures, so that what is painted stands out.
    static constexpr double paleness = 0.55;

    static std::vector<Colour> painted_facets(SurfaceId surface, const AddedLampAnswer& answer,
                                              const Study& study, const AreaRange& range)
    {
        std::vector<Colour> colours;
        for (const CandidateFacet& c : answer.candidates) {
            if (c.surface != surface)
                continue;
            if (colours.empty())
                colours.assign(study.surfaces[surface].mesh.facets.size(),
                               mixed(quiet_colour(surface), white, paleness));
            colours[c.facet] = c.alone        ? range.colour(*c.alone)
                               : c.serves > 0 ? partly_colour
                                              : carrier_colour;
        }
        return colours;
    }

    std::vector<Colour> plain_;
    std::vector<std::vector<Colour>> facets_;
};

/// "lens of 2490 mm2 [ramp] 4400 mm2 and more"
void draw_ramp(Canvas& canvas, const Rect& room, const AreaRange& range)
{
    constexpr double bar_width = 70, bar_height = 8;
    constexpr int steps = 140;
    const auto words = [](const std::string& w) { return Text{.words = w, .size = 8}; };
    const Extent first = canvas.text({room.x, room.y}, words("answers alone with a lens of " +
                                                             typeset(area_words(range.least))));
    const Rect bar{room.x + first.width + 4, room.y + (first.height - bar_height) / 2, bar_width,
                   bar_height};
    Raster ramp(steps, 1);
    for (int i = 0; i < steps; ++i)
        ramp.at(i, 0) =
            range.colour(range.least + (range.most - range.least) * ((i + 0.5) / steps));
    canvas.image(ramp, bar);
    canvas.stroke(path_of(bar), {.width = 0.6});
    canvas.text({bar.right() + 4, room.y}, words(typeset(area_words(range.most)) + " and more"));
}

struct Content {
    PictureFrame frame;
    Raster raster;
    AreaRange range;
    bool any_alone = false;
    std::string title, lamp;
    std::vector<Point> places;
};

void draw(Canvas& canvas, const Content& content)
{
    draw_title(canvas, {0, 0, width, painted_part.y}, content.title, "");
    canvas.image(content.raster, painted_part);
    draw_border(canvas, painted_part);
    for (std::size_t i = content.places.size(); i-- > 0;) {
        const Point2 at = content.frame.place_of(content.places[i]) / pixels_a_point +
                          Point2(painted_part.x, painted_part.y);
        draw_numbered_place(canvas, at, std::to_string(i + 1));
    }
    const double below = painted_part.bottom() + 1.5;
    const double legend_width = width - scale_bar_width - 12;
    draw_legend(canvas, {2, below, legend_width, 13},
                {{lit_colour, {}, content.lamp},
                 {partly_colour, {}, "serves some"},
                 {carrier_colour, {}, "serves nothing"}});
    if (content.any_alone)
        draw_ramp(canvas, {2, below + 13, legend_width, 12}, content.range);
    draw_scale_bar(canvas,
                   {width - scale_bar_width - 2, below, scale_bar_width, height - below - 3},
                   pixels_a_point * content.frame.pixel);
}

std::string caption_of(const AddedLampAnswer& answer, const Study& study, const AreaRange& range)
{
    std::string words =
        "Where one more lamp could go to help " + study.lamps[answer.helped].name + ". ";
    words += answer.counts.alone > 0
                 ? "Coloured facets would answer every row alone, the lighter with the smaller "
                   "lens, from " +
                       area_words(range.least) + " on, by one ray a direction from their middle. "
                 : "No facet answers every row alone. ";
    if (!answer.alone.empty())
        words += "Numbers stand where a lens was measured and checked. ";
    return words + "Darker grey serves some failing directions, lighter grey none.";
}

} // namespace

Figure suitability_view(const AddedLampAnswer& answer, const Session& session,
                        const Workers& workers)
{
    const Study& study = session.study();
    const PreparedScene& scene = session.scene();
    const std::vector<Standing> drawn = drawn_surfaces(study);
    const Caster caster = scene.caster_of(drawn);
    const auto subject = subject_of(answer);
    const PictureFrame frame = frame_of(subject, answer, session, caster);
    const BodyPicture bodies =
        body_picture({caster, scene.meshes_of(drawn), scene.origin()}, frame, workers);
    const AreaRange range = range_of(answer);
    const Colours colours(drawn, answer, study, range);
    auto content = std::make_shared<Content>(
        Content{frame,
                painted(
                    frame, [&](std::size_t at) { return colours.of(bodies.samples[at]); },
                    rims_of(bodies, std::vector<bool>(drawn.size()), workers), workers),
                range,
                answer.counts.alone > 0,
                "Where one more lamp could go",
                study.lamps[answer.helped].name,
                {}});
    for (const AddedPlace& place : answer.alone)
        content->places.push_back(place.seat.centre);
    const std::string caption = caption_of(answer, study, range);
    return {.drawing = {width, height, [content](Canvas& canvas) { draw(canvas, *content); }},
            .title = content->title,
            .caption = caption,
            .alt = caption,
            .is_picture = true};
}

} // namespace glim
