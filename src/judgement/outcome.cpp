#include "judgement/outcome.h"

namespace glim {

namespace {

const OutcomeWord& word_of(Outcome outcome)
{
    for (const OutcomeWord& w : outcome_words)
        if (w.outcome == outcome)
            return w;
    return outcome_words.front();
}

const BecauseWord& word_of(Because because)
{
    for (const BecauseWord& w : because_words)
        if (w.because == because)
            return w;
    return because_words.front();
}

} // namespace

std::string_view key_of(Outcome outcome) { return word_of(outcome).key; }

std::string_view words_of(Outcome outcome) { return word_of(outcome).words; }

std::string_view key_of(Because because) { return word_of(because).key; }

std::string_view words_of(Because because) { return word_of(because).words; }

} // namespace glim
