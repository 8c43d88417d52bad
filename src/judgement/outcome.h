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
    of_the_figures,   ///< the areas say so
    numerical_bounds, ///< undecided: the bounds of an area lie on both sides of the threshold
    lens_too_small,   ///< not met: with nothing in the way the lens would not show enough either
    another_function, ///< not applicable: the row speaks of other functions
    condition_does_not_hold ///< not applicable: a condition of the row (width, height) does not
                            ///< hold
};
struct BecauseWord {
    Because because;
    std::string_view key;
    std::string_view words;
};
inline constexpr std::array because_words = {
    BecauseWord{Because::of_the_figures, "of_the_figures", ""},
    BecauseWord{Because::numerical_bounds, "numerical_bounds",
                "the bounds of the area lie on both sides of the threshold; a smaller "
                "`feature` narrows sampled bounds, exact ones are as narrow as they get"},
    BecauseWord{
        Because::lens_too_small, "lens_too_small",
        "with nothing in the way the lit face would not show enough either: it is too small "
        "or turned away"},
    BecauseWord{Because::another_function, "another_function", "the row speaks of other functions"},
    BecauseWord{Because::condition_does_not_hold, "condition_does_not_hold",
                "a condition of the row does not hold here"},
};
std::string_view key_of(Because because);
std::string_view words_of(Because because);

} // namespace glim
