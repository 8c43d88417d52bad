#include "remedy/cost_sum.h"

namespace glim {

namespace {

std::optional<Range> rate_of(CostEntry entry, const Programme& programme)
{
    return entry == CostEntry::hours ? programme.hour : programme.change;
}

CostLine line_of(const CostEntryWord& word, std::optional<Range> given, const Programme& programme)
{
    CostLine line{word.entry, given, {}, {}};
    if (!word.counted)
        line.money = given;
    else if (given && given->high == 0)
        line.money = Range{};
    else
        line.rate = rate_of(word.entry, programme);
    if (given && line.rate)
        line.money = *given * *line.rate;
    return line;
}

/// What counts once, shared among the vehicles: low over many of them, high over few.
Range shared(const Range& once, const Range& vehicles)
{
    return {once.low / vehicles.high, once.likely / vehicles.likely, once.high / vehicles.low};
}

} // namespace

Range operator+(const Range& a, const Range& b)
{
    return {a.low + b.low, a.likely + b.likely, a.high + b.high};
}

Range operator*(const Range& a, const Range& b)
{
    return {a.low * b.low, a.likely * b.likely, a.high * b.high};
}

CostSum cost_sum(const CostFigures& figures, bool others_cost_nothing, const Programme& programme)
{
    CostSum sum;
    for (std::size_t i = 0; i < cost_entry_words.size(); ++i) {
        const CostEntryWord& word = cost_entry_words[i];
        const std::optional<Range> given =
            figures[i] || !others_cost_nothing ? figures[i] : Range{};
        const CostLine line = line_of(word, given, programme);
        sum.lines.push_back(line);
        if (!line.money) {
            sum.missing.push_back(word.entry);
            continue;
        }
        Range& total = word.basis == CostBasis::a_vehicle ? sum.a_vehicle : sum.once;
        total = total + *line.money;
    }
    if (programme.volume && programme.years) {
        sum.vehicles = *programme.volume * *programme.years;
        sum.programme = sum.a_vehicle * *sum.vehicles + sum.once;
        sum.all_in = sum.a_vehicle + shared(sum.once, *sum.vehicles);
    }
    return sum;
}

} // namespace glim
