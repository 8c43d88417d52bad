#include "words/run_words.h"

#include "words/numbers.h"

#include <algorithm>

namespace glim {

std::string counts_words(const Findings& findings)
{
    std::string words;
    for (const OutcomeWord& word : outcome_words) {
        const auto count =
            std::count_if(findings.checks.begin(), findings.checks.end(),
                          [&](const CheckFindings& c) { return c.outcome == word.outcome; });
        if (count > 0)
            words +=
                (words.empty() ? "" : ", ") + std::to_string(count) + " " + std::string(word.words);
    }
    return words;
}

std::string looked_words(const Sampling& sampling)
{
    return "a direction every " + angle_words(sampling.step) +
           " and at every edge of a field; obstacles of " + rounded(in_mm(sampling.feature), 3) +
           " mm and more";
}

std::string_view words_of(Certify certify)
{
    switch (certify) {
    case Certify::nowhere:
        return "bounds are proved where an answer of rows of obstacles or of light hangs on it";
    case Certify::everywhere:
        return "bounds are proved in every direction";
    case Certify::coarse:
        break;
    }
    return "bounds are proved every 5 degrees, and everywhere before a row of obstacles or of "
           "light is called met or where samples turned out to miss what counts";
}

} // namespace glim
