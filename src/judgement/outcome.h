#pragma once

#include <array>
#include <string_view>

namespace glim {

/// The answer to a check. A requirement not met is an answer, not an error.
enum class Outcome {
    not_met,
    undecided,
    no_photometric_data,
    proof_due,
    met,
    not_applicable,
};

struct OutcomeWord {
    Outcome outcome;
    std::string_view key;   ///< in results
    std::string_view words; ///< for people
};
inline constexpr std::array outcome_words = {
    OutcomeWord{Outcome::not_met, "not_met", "not met"},
    OutcomeWord{Outcome::undecided, "undecided", "undecided"},
    OutcomeWord{Outcome::no_photometric_data, "no_photometric_data", "no photometric data"},
    OutcomeWord{Outcome::proof_due, "proof_due", "partly hidden: photometric proof due"},
    OutcomeWord{Outcome::met, "met", "met"},
    OutcomeWord{Outcome::not_applicable, "not_applicable", "not applicable"},
};
std::string_view key_of(Outcome outcome);
std::string_view words_of(Outcome outcome);

/// Why an outcome is what it is, where the outcome alone does not say.
enum class Because {
    of_the_figures,
    // undecided
    numerical_bounds,
    mesh_accuracy,
    option_not_declared,
    only_if_unavoidable,
    not_in_study,
    outside_measured_range,
    light_without_surface,
    multiplier_not_known,
    category_not_known,
    // proof due
    proof_to_be_agreed,
    // not met
    lens_too_small,
    shows_no_surface,
    wholly_hidden,
    not_filled,
    no_such_lamp,
    too_little_light,
    too_much_light,
    // not applicable
    another_function,
    condition_does_not_hold,
    another_lamp,
};
struct BecauseWord {
    Because because;
    std::string_view key;
    std::string_view words; ///< and what would decide it, where it is undecided
};
inline constexpr std::array because_words = {
    BecauseWord{Because::of_the_figures, "of_the_figures", ""},
    BecauseWord{Because::numerical_bounds, "numerical_bounds",
                "the bounds of the area lie on both sides of the threshold; a smaller "
                "`feature` narrows sampled bounds, exact ones are as narrow as they get"},
    BecauseWord{Because::mesh_accuracy, "mesh_accuracy",
                "within the accuracy of the meshes: finer meshes, or a `chord` known to be smaller "
                "than estimated, would decide it"},
    BecauseWord{Because::option_not_declared, "option_not_declared",
                "the rule leaves a choice to the maker, who keeps to it, and the study does not "
                "declare it: write option = \"...\" in the check"},
    BecauseWord{Because::only_if_unavoidable, "only_if_unavoidable",
                "allowed only where the shape of the bodywork leaves no other place; somebody has "
                "to show that to the technical service"},
    BecauseWord{Because::not_in_study, "not_in_study",
                "what it is measured to is not in the study: add that lamp"},
    BecauseWord{Because::outside_measured_range, "outside_measured_range",
                "the photometric file does not reach there: what is not measured is not known; a "
                "wider measurement would decide it"},
    BecauseWord{
        Because::light_without_surface, "light_without_surface",
        "the photometric file gives light there, and yet the lit surface shows nothing that "
        "way, so that no share can be formed: look at the lit surfaces and at `mounting`"},
    BecauseWord{Because::multiplier_not_known, "multiplier_not_known",
                "the multiplier follows from the gap to a lamp that is not in the study, or not "
                "known closely enough: add that lamp, or a finer mesh"},
    BecauseWord{Because::category_not_known, "category_not_known",
                "the lamp declares no category, and the gap that would give one leads to a lamp "
                "that is not in the study, or is not known closely enough: write `category`, or "
                "add that lamp"},
    BecauseWord{Because::proof_to_be_agreed, "proof_to_be_agreed",
                "area met, but part of the lamp is hidden: proof to be agreed with the technical "
                "service"},
    BecauseWord{Because::lens_too_small, "lens_too_small",
                "with nothing in the way the lit face would not show enough either: it is too "
                "small or turned away"},
    BecauseWord{Because::shows_no_surface, "shows_no_surface",
                "the lamp shows no surface there, even with nothing in the way: no obstacle is not "
                "yet seen"},
    BecauseWord{Because::wholly_hidden, "wholly_hidden",
                "the lamp is wholly hidden there, so that no part is left to prove"},
    BecauseWord{Because::not_filled, "not_filled",
                "the parts neither fill enough of the quadrilateral around them nor stand close "
                "enough to count as one lamp"},
    BecauseWord{Because::no_such_lamp, "no_such_lamp",
                "the rule depends on another lamp, and the study has none on that side"},
    BecauseWord{Because::too_little_light, "too_little_light",
                "the whole lamp's own light is too little, even with nothing in the way"},
    BecauseWord{Because::too_much_light, "too_much_light",
                "the lamp's own light is more than is allowed"},
    BecauseWord{Because::another_function, "another_function", "the row speaks of other functions"},
    BecauseWord{Because::condition_does_not_hold, "condition_does_not_hold",
                "a condition of the row does not hold here"},
    BecauseWord{Because::another_lamp, "another_lamp",
                "the row asks another lamp, which this one depends on"},
};
std::string_view key_of(Because because);
std::string_view words_of(Because because);

} // namespace glim
