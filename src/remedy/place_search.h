#pragma once

#include "remedy/added_lamp.h"

#include <functional>
#include <map>
#include <memory>

namespace glim {

/// Works out the best places among the candidates of an answer, one after the other.
class PlaceSearch {
public:
    /// All outlive it. The answer's candidates are weighed already.
    PlaceSearch(const Session& session, const AddLampTask& task, const AddedLampAnswer& answer,
                const Workers& workers);

    /// Lamps that meet every row alone. Throws Stopped.
    std::vector<AddedPlace> alone(const AddedLampNeeds& needs);
    /// A lamp that fills the gap of the one helped. Throws Stopped.
    std::vector<AddedPlace> filling(const AddedLampNeeds& needs);

private:
    /// A lens that was measured, at the place of a candidate.
    struct Sized {
        std::size_t candidate;
        LensPlace place;
        LensFit fit;
        double figure; ///< the less the better
    };
    /// By a check, or by the areas alone, where no rule of the study could be checked.
    enum class Proof { by_check, by_measure };
    /// What is looked for in one go.
    struct Wish {
        std::optional<Area> CandidateFacet::*lens;
        WhoAnswers who;
        std::size_t places;
        std::function<std::vector<AreaNeed>(const CandidateFacet&)> needs;
        Proof proof;
    };
    class Spots;
    struct Walk;

    std::vector<AddedPlace> places(const Wish& wish, const AddedLampNeeds& needs);
    std::vector<std::size_t> best_first(const Wish& wish) const;
    std::vector<Sized> next_sized(const Wish& wish, const AddedLampNeeds& needs, LensGauge& gauge,
                                  Walk& walk);
    std::optional<Sized> sized(std::size_t candidate, Area lens, LensGauge& gauge,
                               const NeedsAsked& asked);
    std::optional<AddedPlace> proved_place(Sized sized, LensGauge& gauge,
                                           std::span<const std::size_t> checks) const;
    AddedPlace measured_place(const Sized& sized, LensGauge& gauge) const;
    AddedPlace described(std::size_t candidate, const LensPlace& place, const LensFit& fit,
                         const LensGauge& gauge) const;

    LensPlace place_at(std::size_t candidate, Area lens);
    bool has_room(std::size_t candidate, Area lens);
    StudyWithLamp study_with(std::size_t candidate, Area lens, WhoAnswers who);
    std::vector<std::size_t> checks_with_places(StudyWithLamp& with, const Wish& wish,
                                                const AddedLampNeeds& needs) const;
    void measure_distances();
    Length behind_nose(const Point& p) const;
    double estimate(std::size_t candidate, Area lens) const;
    double figure(const AddedPlace& place) const;

    const Session& session_;
    const Study& study_;
    const AddLampTask& task_;
    const AddedLampAnswer& answer_;
    Workers workers_;
    LensShape shape_;
    Length foremost_;
    std::vector<Length> along_; ///< one a candidate
    std::map<std::uint32_t, std::unique_ptr<LensCarrier>> carriers_;
};

} // namespace glim
