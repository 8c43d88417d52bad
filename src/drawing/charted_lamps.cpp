#include "drawing/charted_lamps.h"

#include "judgement/rank.h"
#include "words/look_words.h"
#include "words/row_words.h"

namespace glim {

namespace {

bool is_charted(const LampVerdict& verdict) { return applies(verdict) && has_areas(verdict); }

std::vector<ChartedLamp> charted_of_row(const Findings& findings, std::size_t check,
                                        std::size_t row)
{
    std::vector<ChartedLamp> places;
    const std::vector<const LampVerdict*> verdicts = verdicts_of(findings.checks[check].rows[row]);
    for (std::size_t i = 0; i < verdicts.size(); ++i)
        if (is_charted(*verdicts[i]))
            places.push_back({check, row, i});
    return places;
}

/// None where what decided looks in no direction.
std::optional<ChartedLamp> decisive(const Findings& findings, std::size_t check)
{
    const CheckFindings& asked = findings.checks[check];
    if (asked.deciding)
        for (const ChartedLamp& place : charted_of_row(findings, check, asked.deciding->row))
            if (&verdict_at(findings, place) == &asked.deciding_verdict())
                return place;
    return std::nullopt;
}

} // namespace

const LampVerdict& verdict_at(const Findings& findings, const ChartedLamp& place)
{
    return *verdicts_of(findings.checks[place.check].rows[place.row])[place.lamp];
}

std::optional<ChartedLamp> foremost_charted(const Findings& findings, std::size_t check)
{
    std::optional<ChartedLamp> foremost = decisive(findings, check);
    if (foremost)
        return foremost;
    const std::vector<RowFindings>& rows = findings.checks[check].rows;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        if (rows[row].not_chosen)
            continue;
        for (const ChartedLamp& place : charted_of_row(findings, check, row))
            if (!foremost ||
                rank_of(verdict_at(findings, place)) < rank_of(verdict_at(findings, *foremost)))
                foremost = place;
    }
    return foremost;
}

std::vector<ChartedLamp> charted_lamps(const Findings& findings, std::size_t check)
{
    const std::optional<ChartedLamp> foremost = foremost_charted(findings, check);
    if (!foremost)
        return {};
    std::vector<ChartedLamp> places = charted_of_row(findings, check, foremost->row);
    std::erase_if(places, [&](const ChartedLamp& place) {
        return place != *foremost && findings.looks[verdict_at(findings, place).look].twin;
    });
    return places;
}

std::vector<ChartedLamp> charted_lamps(const Findings& findings)
{
    std::vector<ChartedLamp> places;
    for (std::size_t check = 0; check < findings.checks.size(); ++check)
        for (const ChartedLamp& place : charted_lamps(findings, check))
            places.push_back(place);
    return places;
}

} // namespace glim
