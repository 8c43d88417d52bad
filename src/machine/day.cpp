#include "machine/day.h"

#include <algorithm>
#include <charconv>
#include <chrono>

namespace glim {

namespace {

using std::chrono::year_month_day;

std::string padded(int number, std::size_t digits)
{
    const std::string plain = std::to_string(number);
    return std::string(digits - std::min(digits, plain.size()), '0') + plain;
}

std::string words_of(const year_month_day& day)
{
    return padded(static_cast<int>(day.year()), 4) + "-" +
           padded(static_cast<int>(static_cast<unsigned>(day.month())), 2) + "-" +
           padded(static_cast<int>(static_cast<unsigned>(day.day())), 2);
}

std::optional<int> number_in(std::string_view digits)
{
    int number = 0;
    const char* const end = digits.data() + digits.size();
    const auto [stop, trouble] = std::from_chars(digits.data(), end, number);
    if (trouble != std::errc() || stop != end || digits.front() == '-')
        return std::nullopt;
    return number;
}

} // namespace

std::optional<std::string> day_of_seconds(long long seconds)
{
    constexpr long long last_second = 253402300799; // of the year 9999
    if (seconds < 0 || seconds > last_second)
        return std::nullopt;
    constexpr long long seconds_a_day = 86400;
    const std::chrono::sys_days day{std::chrono::days{static_cast<int>(seconds / seconds_a_day)}};
    return words_of(year_month_day(day));
}

bool is_day(std::string_view words)
{
    if (words.size() != 10 || words[4] != '-' || words[7] != '-')
        return false;
    const std::optional<int> year = number_in(words.substr(0, 4));
    const std::optional<int> month = number_in(words.substr(5, 2));
    const std::optional<int> day = number_in(words.substr(8, 2));
    return year && month && day &&
           year_month_day(std::chrono::year(*year),
                          std::chrono::month(static_cast<unsigned>(*month)),
                          std::chrono::day(static_cast<unsigned>(*day)))
               .ok();
}

std::string today()
{
    using std::chrono::system_clock;
    const auto since = system_clock::now().time_since_epoch();
    return *day_of_seconds(std::chrono::duration_cast<std::chrono::seconds>(since).count());
}

} // namespace glim
