#include "input/photometry_file.h"

#include "input/text_scanner.h"

namespace glim {

Place PhotometricText::place_of(std::string_view part) const
{
    return place_in(text_, name_, part);
}

void PhotometricText::complain(const std::string& kind, std::string_view part, std::string what,
                               std::string remedy)
{
    complaints_.add(kind, [&] {
        return Complaint{place_of(part), std::move(what), std::move(remedy)};
    });
}

void PhotometricText::complain(std::string what, std::string remedy)
{
    complaints_.add("defects", [&] {
        return Complaint{Place{name_, 0, 0, {}}, std::move(what), std::move(remedy)};
    });
}

void PhotometricText::warn(std::string_view part, const std::string& what, std::string remedy)
{
    if (++times_warned_[what] == 1)
        warnings_.push_back({place_of(part), what, std::move(remedy)});
}

std::vector<Warning> PhotometricText::take_warnings()
{
    for (Warning& warning : warnings_)
        if (const std::size_t times = times_warned_[warning.what]; times > 1)
            warning.what += " (" + std::to_string(times) + " times in this file)";
    return std::move(warnings_);
}

void PhotometricText::refuse(std::string_view part, std::string what, std::string remedy)
{
    complaints_.refuse({place_of(part), std::move(what), std::move(remedy)});
}

void PhotometricText::refuse(std::string what, std::string remedy)
{
    complaints_.refuse({Place{name_, 0, 0, {}}, std::move(what), std::move(remedy)});
}

std::vector<Angle> angles_in(const std::vector<WrittenNumber>& numbers)
{
    std::vector<Angle> angles;
    angles.reserve(numbers.size());
    for (const WrittenNumber& number : numbers)
        angles.push_back(degrees(number.value));
    return angles;
}

} // namespace glim
