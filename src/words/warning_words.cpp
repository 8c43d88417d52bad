#include "words/warning_words.h"

namespace glim {

std::string warnings_words(const std::vector<Warning>& warnings, const TextStyle& style)
{
    constexpr int hanging = 4;
    std::string text;
    for (const Warning& w : warnings) {
        text +=
            wrapped("Warning: " + w.place.words() + ": " + w.what, style.columns, hanging) + "\n";
        if (!w.remedy.empty())
            text += labelled_block({{"", w.remedy}}, hanging - 2, style);
    }
    return text;
}

} // namespace glim
