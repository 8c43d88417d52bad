#include "drawing/eye_view.h"

#include "drawing/eye_drawing.h"
#include "drawing/paint_picture.h"
#include "drawing/picture_colours.h"
#include "drawing/picture_words.h"
#include "judgement/plan.h"
#include "judgement/surface_taken.h"
#include "visibility/sweep.h"
#include "words/look_words.h"

#include <algorithm>

namespace glim {

struct EyeView::Lamp {
    LampStanding standing;
    LampView view;
    TriangleMesh lit; ///< vehicle frame
};

namespace {

/// The lit face fills so much of the picture's width or height: around it there is room for what
/// hides it.
constexpr double share_of_lit_face = 0.55;

/// Below this a picture shows rounding.
constexpr Length smallest_pixel = millimetres(0.01);

/// What takes less than this share of what the first takes is not named.
constexpr double share_worth_naming = 0.02;

/// Of several lamps what one of them shows there.
void add(LitPicture& to, const LitPicture& other)
{
    const auto rank = [](LitKind kind) {
        switch (kind) {
        case LitKind::none:
            return 0;
        case LitKind::hidden_by_approved:
            return 1;
        case LitKind::hidden_by_others:
            return 2;
        case LitKind::seen:
            break;
        }
        return 3;
    };
    for (std::size_t i = 0; i < to.samples.size(); ++i)
        if (rank(other.samples[i]) > rank(to.samples[i]))
            to.samples[i] = other.samples[i];
}

bool are_one(const Standing& a, const Standing& b)
{
    return a.surface == b.surface && a.twin == b.twin;
}

Area not_negative(Area a) { return std::max(a, Area()); }

/// What hides a lit face, coloured by it and hatched.
Colour tinted(Colour hider, Colour by, bool hatch_line)
{
    constexpr double tint = 0.4, line_tint = 0.9, line_darkness = 0.3;
    return hatch_line ? mixed(mixed(hider, by, line_tint), black, line_darkness)
                      : mixed(hider, by, tint);
}

/// Where the lit face ends for the eye though something hides it.
void add_hidden_outline(std::vector<Rim>& rims, const LitPicture& lit)
{
    const std::size_t columns = std::size_t{lit.frame.width} * samples_a_side;
    const auto ends = [&](std::size_t at, std::size_t beside) {
        return beside < lit.samples.size() && lit.samples[beside] == LitKind::none &&
               lit.samples[at] != LitKind::none && lit.samples[at] != LitKind::seen;
    };
    for (std::size_t at = 0; at < rims.size(); ++at)
        for (const std::size_t beside : {at - 1, at + 1, at - columns, at + columns})
            if (ends(at, beside))
                rims[at] = std::max(rims[at], Rim::thin);
}

Colour sample_colour(const BodyPicture& bodies, const LitPicture& lit, Colour quiet, std::size_t at)
{
    constexpr float glow = 0.75F; // a lit face shows its shape only faintly
    const BodySample& body = bodies.samples[at];
    const Colour plain = body.any() ? in_light(quiet, body.light) : nothing_there;
    switch (lit.samples[at]) {
    case LitKind::none:
        return plain;
    case LitKind::seen:
        return in_light(lit_colour, body.any() ? glow + (1 - glow) * body.light : 1);
    case LitKind::hidden_by_others:
        return tinted(plain, hidden_colour, is_hatched(lit.frame, at));
    case LitKind::hidden_by_approved:
        break;
    }
    return tinted(plain, own_hidden_colour, is_hatched(lit.frame, at, true));
}

} // namespace

EyeView::EyeView(const Study& study, const PreparedScene& scene, const LampLook& look)
    : study_(study), scene_(scene), look_(look)
{
    for (const LampStanding& standing : look.standings) {
        lamps_.push_back(
            {standing, scene.view_of(standing, study.sampling), scene.lit_surface_of(standing)});
        for (const Standing& obstacle : scene.obstacles_of(standing))
            if (std::none_of(obstacles_.begin(), obstacles_.end(),
                             [&](const Standing& known) { return are_one(known, obstacle); }))
                obstacles_.push_back(obstacle);
    }
}

EyeView::~EyeView() = default;

ViewedAreas EyeView::areas(const Bearing& toward) const
{
    const auto found =
        std::lower_bound(look_.toward.begin(), look_.toward.end(), toward, by_v_then_h);
    if (found != look_.toward.end() && *found == toward) {
        const auto at = static_cast<std::size_t>(found - look_.toward.begin());
        const Area bare = look_.seen[at].lens, visible = look_.visible(at),
                   hidden = look_.hidden(at);
        // Where `visible` is exact and `hidden` sampled, their sum may miss the whole: that is no
        // part hidden by the lamp itself.
        const Area own = is_told(bare - look_.seen[at].approved)
                             ? not_negative(bare - visible - hidden)
                             : Area();
        return {bare, visible, hidden, own, is_exact(look_, at), true};
    }
    SeenArea seen;
    for (const Lamp& lamp : lamps_)
        seen += seen_toward(lamp.view, direction_of(toward, look_.frame));
    return {seen.lens, seen.visible, seen.hidden(), seen.lens - seen.approved, false, false};
}

std::vector<std::size_t> EyeView::hiders_toward(const Direction& toward) const
{
    std::vector<Area> taken(obstacles_.size());
    for (const Lamp& lamp : lamps_) {
        // What was approved with one lamp may hide another like anything else.
        std::vector<SurfaceTaken> of_lamp;
        add_blame(of_lamp, scene_.obstacles_of(lamp.standing), blame_toward(lamp.view, toward));
        for (const SurfaceTaken& t : of_lamp)
            if (!scene_.is_approved(t.standing, lamp.standing))
                taken[part_of(t.standing)] += t.area.sum();
    }
    const Area most = taken.empty() ? Area() : *std::max_element(taken.begin(), taken.end());
    std::vector<std::size_t> hiders;
    for (std::size_t part = 0; part < taken.size(); ++part)
        if (taken[part] > share_worth_naming * most)
            hiders.push_back(part);
    std::stable_sort(hiders.begin(), hiders.end(),
                     [&](std::size_t a, std::size_t b) { return taken[a] > taken[b]; });
    return hiders;
}

std::size_t EyeView::part_of(const Standing& standing) const
{
    return static_cast<std::size_t>(
        std::find_if(obstacles_.begin(), obstacles_.end(),
                     [&](const Standing& known) { return are_one(known, standing); }) -
        obstacles_.begin());
}

PictureFrame EyeView::frame_toward(const Direction& toward) const
{
    PictureFrame frame = picture_frame(toward, look_.frame.up, look_.frame.forward);
    frame.width = eye_raster_width;
    frame.height = eye_raster_height;
    Box box; // in the frame's axes
    const auto add_facets = [&](bool facing_only) {
        for (const Lamp& lamp : lamps_)
            for (std::size_t f = 0; f < lamp.lit.facets.size(); ++f)
                if (!facing_only || toward.dot(area_vector(lamp.lit, f)) > 0)
                    for (int i = 0; i < 3; ++i) {
                        const Point& p = lamp.lit.corner(f, i);
                        box.add({frame.across.dot(p), frame.up.dot(p), toward.dot(p)});
                    }
    };
    add_facets(true);
    if (box.empty())
        add_facets(false); // a lamp that is turned away is pictured all the same
    const Point centre = box.centre();
    frame.centre = centre.x() * frame.across + centre.y() * frame.up + centre.z() * toward.vector();
    frame.pixel = std::max(smallest_pixel, millimetres(std::max(box.size().x() / frame.width,
                                                                box.size().y() / frame.height)) /
                                               share_of_lit_face);
    return frame;
}

Raster EyeView::painted_toward(const BodyPicture& bodies, const LitPicture& lit,
                               const std::vector<std::size_t>& hiders, const Workers& workers) const
{
    std::vector<bool> strong(obstacles_.size());
    for (const std::size_t part : hiders)
        strong[part] = true;
    std::vector<Rim> rims = rims_of(bodies, strong, workers);
    add_hidden_outline(rims, lit);
    const auto colour = [&](std::size_t at) {
        const BodySample& body = bodies.samples[at];
        const Colour quiet =
            body.any() ? quiet_colour(obstacles_[body.part].surface) : nothing_there;
        return sample_colour(bodies, lit, quiet, at);
    };
    return painted(bodies.frame, colour, rims, workers);
}

Figure EyeView::toward(const Bearing& toward, const Workers& workers) const
{
    const PictureFrame frame = frame_toward(direction_of(toward, look_.frame));
    const Caster caster = scene_.caster_of(obstacles_);
    const BodyPicture bodies =
        body_picture({caster, scene_.meshes_of(obstacles_), scene_.origin()}, frame, workers);
    LitPicture lit{frame, std::vector(bodies.samples.size(), LitKind::none)};
    for (const Lamp& lamp : lamps_)
        add(lit, lit_picture(scene_, lamp.standing, lamp.view, frame, workers));
    const std::vector<std::size_t> hiders = hiders_toward(frame.toward);

    std::vector<std::string> names, hider_names;
    names.reserve(obstacles_.size());
    hider_names.reserve(hiders.size());
    for (const Standing& s : obstacles_)
        names.push_back(surface_label(study_.surfaces[s.surface].name, s.twin, look_));
    for (const std::size_t part : hiders)
        hider_names.push_back(names[part]);
    return eye_figure({look_, toward, areas(toward), bodies, lit, names, hider_names},
                      painted_toward(bodies, lit, hiders, workers));
}

} // namespace glim
