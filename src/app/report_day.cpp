#include "app/report_day.h"

#include "machine/day.h"
#include "model/complaint.h"

#include <charconv>
#include <cstdlib>

namespace glim {

namespace {

constexpr const char* variable = "SOURCE_DATE_EPOCH";

std::optional<std::string> day_in(const std::string& seconds)
{
    long long number = 0;
    const char* const end = seconds.data() + seconds.size();
    const auto [stop, trouble] = std::from_chars(seconds.data(), end, number);
    return trouble == std::errc() && stop == end ? day_of_seconds(number) : std::nullopt;
}

} // namespace

std::string report_day(const std::optional<std::string>& asked,
                       const std::optional<std::string>& source_date_epoch)
{
    if (asked)
        return *asked == "today" ? today() : *asked;
    if (!source_date_epoch || source_date_epoch->empty())
        return {};
    if (const std::optional<std::string> day = day_in(*source_date_epoch))
        return *day;
    refuse(Place{variable, 0, 0, {}}, "`" + *source_date_epoch + "` is no count of seconds",
           "set it to the whole seconds since the beginning of 1970, or take it away; --date goes "
           "before it");
}

std::optional<std::string> source_date_epoch()
{
    const char* const value = std::getenv(variable);
    return value ? std::optional<std::string>(value) : std::nullopt;
}

} // namespace glim
