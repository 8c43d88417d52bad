#include "words/chart_words.h"

#include "words/numbers.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace glim {

namespace {

void replace_all(std::string& text, std::string_view what, std::string_view with)
{
    for (std::size_t at = text.find(what); at != std::string::npos;
         at = text.find(what, at + with.size()))
        text.replace(at, what.size(), with);
}

struct UnitSign {
    std::string_view unit, sign;
};
constexpr std::array unit_signs = {UnitSign{" deg", "\u00b0"}, UnitSign{" mm2", " mm\u00b2"},
                                   UnitSign{" cm2", " cm\u00b2"}, UnitSign{" cm3", " cm\u00b3"}};

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// A blank, or the end of a clause: in "5 deg.toml" the stop goes on.
bool ends_word(std::string_view text, std::size_t at)
{
    constexpr std::string_view stops = ",;:.)";
    if (at < text.size() && stops.find(text[at]) != std::string_view::npos)
        ++at;
    return at >= text.size() || text[at] == ' ' || text[at] == ')' || text[at] == '\n';
}

const UnitSign* unit_at(std::string_view text, std::size_t at)
{
    if (at == 0 || !is_digit(text[at - 1]))
        return nullptr;
    for (const UnitSign& unit : unit_signs)
        if (text.substr(at).starts_with(unit.unit) && ends_word(text, at + unit.unit.size()))
            return &unit;
    return nullptr;
}

/// How many bytes the longest of the names takes that stands there; 0 for none.
std::size_t name_at(std::string_view text, std::size_t at, const std::vector<std::string>& names)
{
    std::size_t longest = 0;
    for (const std::string& name : names)
        if (text.substr(at).starts_with(name))
            longest = std::max(longest, name.size());
    return longest;
}

std::string with_true_minus(std::string words)
{
    replace_all(words, "-", "\u2212");
    return words;
}

} // namespace

std::string typeset(std::string_view words, const std::vector<std::string>& names)
{
    std::string set;
    for (std::size_t at = 0; at < words.size();) {
        const UnitSign* unit = unit_at(words, at);
        const std::size_t name = name_at(words, at, names);
        set += unit ? unit->sign : words.substr(at, std::max<std::size_t>(name, 1));
        at += unit ? unit->unit.size() : std::max<std::size_t>(name, 1);
    }
    return set;
}

std::string typeset_angle(Angle angle) { return with_true_minus(bare_angle(angle)) + "\u00b0"; }

std::string typeset_figure(double figure) { return with_true_minus(rounded(figure, 3)); }

std::string typeset_area(double mm2)
{
    return with_true_minus(typeset(area_words(square_millimetres(mm2))));
}

} // namespace glim
