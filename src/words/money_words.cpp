#include "words/money_words.h"

#include "words/numbers.h"

namespace glim {

namespace {

/// Tenths of a cent decide nothing.
constexpr int money_decimals = 2;

std::string spread(const Range& range)
{
    return range.is_one() ? "" : " (" + grouped(range.low) + " to " + grouped(range.high) + ")";
}

} // namespace

std::string grouped(double number)
{
    std::string text = rounded(number, money_decimals);
    const std::size_t first = text.front() == '-' ? 1 : 0;
    std::size_t at = std::min(text.find('.'), text.size());
    while (at > first + 3) {
        at -= 3;
        text.insert(at, ",");
    }
    return text;
}

std::string range_words(const Range& range) { return grouped(range.likely) + spread(range); }

std::string money_words(const Range& range, const std::string& currency)
{
    return grouped(range.likely) + " " + currency + spread(range);
}

} // namespace glim
