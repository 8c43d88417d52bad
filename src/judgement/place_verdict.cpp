#include "judgement/place_verdict.h"

#include "judgement/lamp_parts.h"
#include "judgement/place_measure.h"
#include "judgement/verdict.h"
#include "model/rule_words.h"
#include "units/trig.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace glim {

namespace {

std::optional<double> count_of(const std::optional<Length>& length)
{
    return length ? std::optional(in_mm(*length)) : std::nullopt;
}

/// What a lamp is measured in.
struct Surroundings {
    const Study& study;
    const PreparedScene& scene;
    const LampLook& look;
    ReferenceAxis axis;
};

/// Of the surfaces that the lamp emits from, mm.
double widest_chord(const Study& study, LampId lamp)
{
    double widest = 0;
    for (const SurfaceId s : study.lamps[lamp].emits)
        widest = std::max(widest, in_mm(study.surfaces[s].chord.error));
    return widest;
}

/// Fills one verdict, criterion by criterion.
class PlaceJudge {
public:
    PlaceJudge(LampVerdict& verdict, const Surroundings& in, const StandingLamp& lamp)
        : verdict_(verdict), look_(in.look), study_(in.study), scene_(in.scene), lamp_(lamp),
          axis_(in.axis)
    {
        accuracy_ = widest_chord(in.study, lamp.standing.lamp);
    }

    void operator()(const HeightLimits& limits)
    {
        if (limits.of != HeightOf::apparent_surface) {
            judge(height_of(limits));
        } else if (const auto place = place_of(lamp_.lit, lamp_.axis, study_.vehicle, ground())) {
            judge({.what = "lowest point of the apparent surface, above the ground",
                   .figure = in_mm(place->least_height),
                   .at_least = count_of(limits.at_least),
                   .points = {place->lowest},
                   .note = state_note()});
            judge({.what = "highest point of the apparent surface, above the ground",
                   .figure = in_mm(place->most_height),
                   .at_most = count_of(limits.at_most),
                   .points = {place->highest},
                   .note = state_note()});
        } else {
            turned_away();
        }
        if (limits.unless_unavoidable && verdict_.outcome == Outcome::not_met &&
            kept_with(limits.unless_unavoidable))
            set(Outcome::undecided, Because::only_if_unavoidable);
    }

    void operator()(const ToOuterEdge& limit)
    {
        const auto place = place_of(lamp_.lit, lamp_.axis, study_.vehicle, ground());
        const std::optional<OuterEdge> edge = study_.vehicle.outer_edge();
        if (!place || !edge)
            return place ? set(Outcome::undecided, Because::not_in_study) : turned_away();
        judge({.what = "from the outermost point of the apparent surface to the extreme outer edge",
               .figure = in_mm(edge->from_median - place->from_median_outermost),
               .at_most = in_mm(limit.at_most),
               .points = {place->outermost},
               .note = edge->derived ? "the edge taken at half the overall width" : ""});
    }

    void operator()(const BetweenInnerEdges& limit)
    {
        if (look_.side == Side::median)
            return set(Outcome::not_applicable, Because::condition_does_not_hold);
        const std::optional<LampStanding> partner = partner_of(study_, lamp_.standing);
        if (!partner)
            return set(Outcome::undecided, Because::not_in_study);
        const StandingLamp second = standing_lamp(study_, scene_, *partner, axis_);
        const auto here = place_of(lamp_.lit, lamp_.axis, study_.vehicle, ground());
        const auto there = place_of(second.lit, second.axis, study_.vehicle, ground());
        if (!here || !there)
            return turned_away();
        judge({.what = "between the inner edges of the two lamps",
               .figure = in_mm(between_inner_edges(*here, *there)),
               .at_least = in_mm(limit.at_least),
               .points = {here->innermost, there->innermost}});
    }

    void operator()(const GapToLamp& asked)
    {
        const std::optional<NearestLamp> nearest =
            nearest_lamp(study_, scene_, lamp_, asked, axis_);
        if (!nearest)
            return set(Outcome::undecided, Because::not_in_study);
        accuracy_ += widest_chord(study_, nearest->lamp);
        const std::string& declared = study_.lamps[lamp_.standing.lamp].category;
        const auto own = std::find_if(asked.steps.begin(), asked.steps.end(),
                                      [&](const GapStep& s) { return s.follows == declared; });
        const bool held = asked.is_category && own != asked.steps.end();
        judge(
            {.what = std::string("gap to ") + study_.lamps[nearest->lamp].name + ", " +
                     std::string(words_of_gap(asked.from)),
             .figure = in_mm(nearest->gap.distance),
             .at_least = held ? std::optional(in_mm(own->at_least)) : std::nullopt,
             .points = {nearest->gap.from, nearest->gap.to},
             .note = asked.is_category && declared.empty() ? "the lamp declares no category" : ""});
        const auto reached =
            std::find_if(asked.steps.begin(), asked.steps.end(),
                         [&](const GapStep& s) { return nearest->gap.distance >= s.at_least; });
        if (reached != asked.steps.end())
            verdict_.follows = reached->follows;
        else
            set(Outcome::not_met, Because::of_the_figures);
    }

    void operator()(const LevelAxis& limit)
    {
        const Angle tilt = arc_sine(lamp_.axis.dot(ground().up));
        accuracy_ = 0; // an axis is declared, not meshed
        judge({.what = "tilt of the reference axis to the ground, up positive",
               .unit = FigureUnit::degrees,
               .figure = in_degrees(tilt),
               .at_least = -in_degrees(limit.within),
               .at_most = in_degrees(limit.within),
               .points = {},
               .note = state_note()});
    }

    /// Either is enough; one part always is.
    void operator()(const OneLamp& limit)
    {
        const PartsOfLamp parts = parts_of_lamp(lamp_.lit, lamp_.axis);
        if (parts.parts == 0)
            return turned_away();
        Measurement filled{.what = "share of the smallest quadrilateral around the parts",
                           .unit = FigureUnit::share,
                           .figure = parts.share_of_quadrilateral,
                           .at_least = limit.share};
        Measurement gap{.what = "widest gap between the facing edges of the " +
                                std::to_string(parts.parts) + " parts",
                        .figure = in_mm(parts.widest_gap),
                        .at_most = in_mm(limit.widest_gap)};
        const bool one = parts.parts == 1 || filled.margin() >= 0 || gap.margin() >= 0;
        set(one ? Outcome::met : Outcome::not_met,
            one ? Because::of_the_figures : Because::not_filled);
        verdict_.relative_margin =
            parts.parts == 1
                ? 1
                : std::max(filled.margin() / limit.share, gap.margin() / in_mm(limit.widest_gap));
        verdict_.measured = {std::move(filled), std::move(gap)};
    }

    template <class Other>
    void operator()(const Other&)
    {
        throw std::logic_error("this row looks in directions");
    }

private:
    const Ground& ground() const { return study_.ground_in(look_.state)->ground; }

    static std::string_view words_of_gap(GapFrom from)
    {
        return gap_from_words[from == gap_from_words[0].from ? 0 : 1].words;
    }

    std::string state_note() const
    {
        return look_.state_stands_in
                   ? "the ground at " + look_.state + " load stands in for the rule's own state"
                   : "";
    }

    Measurement height_of(const HeightLimits& limits) const
    {
        const auto word = std::find_if(height_of_words.begin(), height_of_words.end(),
                                       [&](const auto& w) { return w.of == limits.of; });
        Measurement m{.what = std::string(word->words) + ", above the ground",
                      .figure = in_mm(look_.axis_height),
                      .at_least = count_of(limits.at_least),
                      .at_most = count_of(limits.at_most),
                      .points = {look_.centre},
                      .note = state_note()};
        if (limits.of == HeightOf::lamp_centre) {
            if (const auto place = place_of(lamp_.lit, lamp_.axis, study_.vehicle, ground())) {
                m.points = {place->centroid};
                m.figure = in_mm(ground().height_of(place->centroid));
            }
        } else if (look_.centre_assumed) {
            m.note += std::string(m.note.empty() ? "" : "; ") +
                      "the centre of reference is assumed: the centroid of the lit face";
        }
        return m;
    }

    void set(Outcome outcome, Because because)
    {
        verdict_.outcome = outcome;
        verdict_.because = because;
    }

    void turned_away() { set(Outcome::not_met, Because::shows_no_surface); }

    /// The worst of the figures so far decides.
    void judge(Measurement m)
    {
        m.accuracy = accuracy_;
        const double margin = m.margin();
        Outcome outcome = Outcome::met;
        if (margin < accuracy_ && accuracy_ > 0)
            outcome = Outcome::undecided;
        if (margin < -accuracy_)
            outcome = Outcome::not_met;
        if (outcome < verdict_.outcome)
            set(outcome,
                outcome == Outcome::undecided ? Because::mesh_accuracy : Because::of_the_figures);
        const double limit = m.at_least.value_or(m.at_most.value_or(1));
        const double relative =
            std::isinf(margin) ? 1 : margin / std::max(std::abs(limit), least_limit);
        verdict_.relative_margin = std::min(verdict_.relative_margin, relative);
        verdict_.measured.push_back(std::move(m));
    }

    bool kept_with(const std::optional<Length>& at_most) const
    {
        return std::all_of(verdict_.measured.begin(), verdict_.measured.end(), [&](Measurement m) {
            if (m.at_most)
                m.at_most = in_mm(*at_most);
            return m.margin() >= 0;
        });
    }

    /// Margins are compared as shares of their limit; a limit of 0 counts as one unit.
    static constexpr double least_limit = 1;

    LampVerdict& verdict_;
    const LampLook& look_;
    const Study& study_;
    const PreparedScene& scene_;
    const StandingLamp& lamp_;
    ReferenceAxis axis_;
    double accuracy_ = 0; ///< mm
};

} // namespace

LampVerdict place_verdict(const RuleRow& row, const Asked& asked, const LampLook& look,
                          const Study& study, const PreparedScene& scene)
{
    LampVerdict verdict = begun_verdict(asked);
    if (asked.not_applicable || asked.category_open)
        return verdict;
    verdict.outcome = Outcome::met;
    verdict.relative_margin = std::numeric_limits<double>::max();
    const StandingLamp lamp = standing_lamp(study, scene, asked.lamp, row.axis);
    std::visit(PlaceJudge(verdict, {study, scene, look, row.axis}, lamp), row.criterion);
    if (verdict.measured.empty())
        verdict.relative_margin = 0;
    return verdict;
}

} // namespace glim
