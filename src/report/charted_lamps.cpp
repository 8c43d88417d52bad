#include "report/charted_lamps.h"

#include "report/look_words.h"
#include "report/row_words.h"

namespace glim {

namespace {

bool is_charted(const LampVerdict& verdict) { return applies(verdict) && has_areas(verdict); }

/// What is worst of a row; none if it looks in no direction.
const LampVerdict* worst_charted(const RowFindings& row)
{
    const LampVerdict* worst = nullptr;
    for (const LampVerdict* verdict : verdicts_of(row))
        if (is_charted(*verdict) &&
            (!worst || std::pair(verdict->outcome, verdict->relative_margin) <
                           std::pair(worst->outcome, worst->relative_margin)))
            worst = verdict;
    return worst;
}

/// Whether the answer hangs on this verdict.
bool decides(const CheckFindings& check, const LampVerdict& verdict)
{
    return check.deciding && &check.deciding_verdict() == &verdict;
}

void add_lamps(const Findings& findings, std::size_t check, std::vector<LampPlace>& places)
{
    const CheckFindings& asked = findings.checks[check];
    const std::optional<std::size_t> row = charted_row(asked);
    if (!row)
        return;
    const std::vector<const LampVerdict*> verdicts = verdicts_of(asked.rows[*row]);
    for (std::size_t i = 0; i < verdicts.size(); ++i)
        if (is_charted(*verdicts[i]) &&
            (!findings.looks[verdicts[i]->look].twin || decides(asked, *verdicts[i])))
            places.push_back({check, *row, i});
}

} // namespace

const LampVerdict& verdict_at(const Findings& findings, const LampPlace& place)
{
    return *verdicts_of(findings.checks[place.check].rows[place.row])[place.lamp];
}

std::optional<std::size_t> charted_row(const CheckFindings& check)
{
    if (check.deciding && is_charted(check.deciding_verdict()))
        return check.deciding->row;
    std::optional<std::size_t> worst;
    for (std::size_t i = 0; i < check.rows.size(); ++i) {
        const LampVerdict* here = worst_charted(check.rows[i]);
        const LampVerdict* kept = worst ? worst_charted(check.rows[*worst]) : nullptr;
        if (here && (!kept || std::pair(here->outcome, here->relative_margin) <
                                  std::pair(kept->outcome, kept->relative_margin)))
            worst = i;
    }
    return worst;
}

std::vector<LampPlace> charted_lamps(const Findings& findings)
{
    std::vector<LampPlace> places;
    for (std::size_t check = 0; check < findings.checks.size(); ++check)
        add_lamps(findings, check, places);
    return places;
}

} // namespace glim
