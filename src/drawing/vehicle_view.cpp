#include "drawing/vehicle_view.h"

#include "drawing/blocking_mesh.h"
#include "drawing/colour_ramp.h"
#include "drawing/paint_picture.h"
#include "drawing/picture_colours.h"
#include "drawing/vehicle_camera.h"
#include "drawing/vehicle_drawing.h"
#include "visibility/body_picture.h"
#include "words/chart_words.h"
#include "words/look_words.h"
#include "words/numbers.h"
#include "words/verdict_words.h"

#include <algorithm>

namespace glim {

namespace {

bool is_drawn(const Surface& s)
{
    return s.role != Role::clear && s.role != Role::ignored && !s.lit_part_of;
}

std::vector<Standing> drawn_surfaces(const Study& study)
{
    std::vector<Standing> drawn;
    for (const SurfaceId id : study.surfaces.ids()) {
        if (!is_drawn(study.surfaces[id]))
            continue;
        drawn.push_back({id, false});
        if (study.surfaces[id].mirror == MirrorRule::yes)
            drawn.push_back({id, true});
    }
    return drawn;
}

/// Whether one of the look's lamps shines from it; of a trimmed lens the whole counts.
bool shines(const Standing& standing, const LampLook& look, const Study& study)
{
    for (const LampStanding& lamp : look.standings)
        for (const SurfaceId lit : study.lamps[lamp.lamp].emits)
            if (standing.twin == lamp.twin &&
                study.surfaces[lit].lit_part_of.value_or(lit) == standing.surface)
                return true;
    return false;
}

/// The colours of one verdict's corner, part by part.
class CornerColours {
public:
    CornerColours(const std::vector<Standing>& drawn, const LampLook& look, const Study& study,
                  const std::vector<BlockingSurface>& blocking)
    {
        for (const Standing& s : drawn) {
            const Surface& surface = study.surfaces[s.surface];
            plain_.push_back(shines(s, look, study) ? lit_colour : quiet_colour(s.surface));
            strength_.emplace_back();
            for (const BlockingSurface& b : blocking)
                if (b.name == surface.name && b.twin == s.twin)
                    strength_.back() = strengths(b, surface.mesh.facets.size());
        }
    }

    Colour of(const BodySample& sample) const
    {
        if (!sample.any())
            return nothing_there;
        return in_light(takes(sample)
                            ? ramp_colour(painted_strength(strength_[sample.part][sample.facet]))
                            : plain_[sample.part],
                        sample.light);
    }

    /// Whether neither the lamp nor what hides it is there.
    bool is_quiet(const BodySample& sample) const
    {
        return sample.any() && plain_[sample.part] != lit_colour && !takes(sample);
    }

private:
    bool takes(const BodySample& sample) const
    {
        const std::vector<double>& strength = strength_[sample.part];
        return !strength.empty() && strength[sample.facet] >= 0;
    }

    /// One a facet of the surface; below 0 where it takes nothing.
    static std::vector<double> strengths(const BlockingSurface& blocking, std::size_t facets)
    {
        std::vector<double> all(facets, -1);
        for (std::size_t f = 0; f < blocking.facets.size(); ++f)
            if (blocking.taken[f] > Area())
                all[blocking.facets[f]] = blocking.strength[f];
        return all;
    }

    std::vector<Colour> plain_;
    std::vector<std::vector<double>> strength_;
};

/// How figures are written: as results have them, or in the signs of print. Never the names beside
/// them, which may look like units.
using Setting = std::string (*)(std::string);

std::string as_it_is(std::string words) { return words; }
std::string in_print(std::string words) { return typeset(words); }

/// "nose takes 1594.1 mm2"
std::string taken_words(const LampVerdict& verdict, const LampLook& look, Setting set)
{
    if (verdict.blockers.empty())
        return {};
    const Blocker& most = *std::max_element(
        verdict.blockers.begin(), verdict.blockers.end(),
        [](const Blocker& a, const Blocker& b) { return a.taken_at_worst() < b.taken_at_worst(); });
    return surface_label(most.surface, most.twin, look) + " takes " +
           set(area_words(most.taken_at_worst()));
}

std::string meets_words(const SightLine& line, const LampLook& look, const Study& study)
{
    if (!line.body)
        return {};
    return "meets " + surface_label(study.surfaces[line.body->surface].name, line.body->twin, look);
}

VehicleOverlay overlay_of(const Study& study, const CornerSubject& subject,
                          const LampVerdict& verdict, Setting set)
{
    const LampLook& look = subject.look;
    const std::size_t at = worst_at(verdict);
    const Bearing& toward = look.toward[at];
    const std::string bearing = set(bearing_words(toward, speech_of(look)));
    VehicleOverlay overlay;
    overlay.title = label_of(look) + ", worst from " + bearing;
    overlay.figures = bearing_figures(toward);
    overlay.lit_words =
        label_of(look) + ": " +
        set(area_words(look.visible(at)) + " in view of " + area_words(look.seen[at].lens));
    overlay.taken_words = taken_words(verdict, look, set);
    overlay.eye_words = "to the eye, " + bearing;
    overlay.line = subject.line;
    if (subject.line)
        overlay.meets_words = meets_words(*subject.line, look, study);
    return overlay;
}

std::string caption_of(const LampVerdict& verdict, const VehicleOverlay& overlay)
{
    std::string words = overlay.title + " (" + overlay.figures + "), and what stands around it. " +
                        "The line leads from the lit face to the eye";
    words += overlay.meets_words.empty() ? "; nothing is in its way."
                                         : "; it " + overlay.meets_words + " at the ring.";
    if (!overlay.taken_words.empty())
        words += " Orange facets hide the lamp, the darker the more for their size" +
                 std::string(verdict.blockers.front().mean_alone
                                 ? ", on the mean over the directions that fail"
                                 : "") +
                 ". In the worst direction " + overlay.taken_words + ".";
    return words + " Clear covers are not drawn.";
}

/// Names stand on quiet ground only, and not where other words stand.
std::vector<bool> free_of_subject(const BodyPicture& bodies, const CornerColours& colours,
                                  const std::vector<Rect>& taken)
{
    std::vector<bool> free;
    free.reserve(bodies.samples.size());
    const std::size_t columns = std::size_t{bodies.frame.width} * samples_a_side;
    for (std::size_t at = 0; at < bodies.samples.size(); ++at) {
        const double x = static_cast<double>(at % columns) / samples_a_side;
        const std::size_t row = at / columns;
        const double y = static_cast<double>(row) / samples_a_side;
        const bool is_taken = std::any_of(taken.begin(), taken.end(), [&](const Rect& r) {
            return r.x <= x && x <= r.right() && r.y <= y && y <= r.bottom();
        });
        free.push_back(!is_taken && colours.is_quiet(bodies.samples[at]));
    }
    return free;
}

std::vector<std::string> names_of(const std::vector<Standing>& drawn, const LampLook& look,
                                  const Study& study)
{
    std::vector<std::string> names;
    names.reserve(drawn.size());
    for (const Standing& s : drawn)
        names.push_back(surface_label(study.surfaces[s.surface].name, s.twin, look));
    return names;
}

CornerSubject subject_of(const Session& session, const LampLook& look, const LampVerdict& verdict)
{
    const PreparedScene& scene = session.scene();
    CornerSubject subject{look,
                          {},
                          blocking_surfaces(verdict, session.study()),
                          sight_line(session.study(), scene, look, look.toward[worst_at(verdict)])};
    for (const LampStanding& lamp : look.standings)
        subject.lit.push_back(scene.lit_surface_of(lamp));
    return subject;
}

} // namespace

Figure vehicle_view(const Session& session, const LampLook& look, const LampVerdict& verdict,
                    const Workers& workers)
{
    const Study& study = session.study();
    const PreparedScene& scene = session.scene();
    const CornerSubject subject = subject_of(session, look, verdict);
    const std::vector<Standing> drawn = drawn_surfaces(study);
    const Caster caster = scene.caster_of(drawn);
    const PictureFrame frame = corner_frame(subject, study.vehicle, caster, scene.origin(),
                                            {vehicle_raster_width, vehicle_raster_height});
    const BodyPicture bodies =
        body_picture({caster, scene.meshes_of(drawn), scene.origin()}, frame, workers);
    const CornerColours colours(drawn, look, study, subject.blocking);
    const Raster raster = painted(
        frame, [&](std::size_t at) { return colours.of(bodies.samples[at]); },
        rims_of(bodies, std::vector<bool>(drawn.size()), workers), workers);

    VehicleOverlay overlay = overlay_of(study, subject, verdict, in_print);
    overlay.labels =
        place_labels(bodies, free_of_subject(bodies, colours, rooms_taken(frame, overlay)),
                     names_of(drawn, look, study), vehicle_label_size, vehicle_pixels_a_point);
    const VehicleOverlay plain = overlay_of(study, subject, verdict, as_it_is);
    const std::string caption = caption_of(verdict, plain);
    return {.drawing = vehicle_drawing(frame, raster, std::move(overlay)),
            .title = plain.title,
            .caption = caption,
            .alt = caption,
            .is_picture = true};
}

} // namespace glim
