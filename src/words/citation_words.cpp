#include "words/citation_words.h"

#include "words/keys.h"

namespace glim {

std::string citation_words(const Citation& citation)
{
    const std::string words = std::string(words_of(citation.provenance)) + "; " + citation.source;
    return citation.clause.empty() ? words : words + " (" + citation.clause + ")";
}

} // namespace glim
