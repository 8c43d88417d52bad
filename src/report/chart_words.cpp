#include "report/chart_words.h"

#include "report/numbers.h"

#include <string_view>

namespace glim {

namespace {

void replace_all(std::string& text, std::string_view what, std::string_view with)
{
    for (std::size_t at = text.find(what); at != std::string::npos;
         at = text.find(what, at + with.size()))
        text.replace(at, what.size(), with);
}

std::string with_true_minus(std::string words)
{
    replace_all(words, "-", "\u2212");
    return words;
}

} // namespace

std::string typeset(std::string words)
{
    words += ' '; // so that a unit at the end is followed by something, too
    for (const char after : {' ', ',', ';', '.', ')'})
        replace_all(words, std::string(" deg") + after, std::string("\u00b0") + after);
    replace_all(words, "mm2", "mm\u00b2");
    words.pop_back();
    return words;
}

std::string typeset_angle(Angle angle) { return with_true_minus(bare_angle(angle)) + "\u00b0"; }

std::string typeset_figure(double figure) { return with_true_minus(rounded(figure, 3)); }

std::string typeset_area(double mm2)
{
    return with_true_minus(typeset(area_words(square_millimetres(mm2))));
}

} // namespace glim
