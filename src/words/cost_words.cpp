#include "words/cost_words.h"

#include "words/capitalised.h"
#include "words/money_words.h"
#include "words/name_list.h"

#include <cmath>

namespace glim {

namespace {

std::string_view words_of(CostEntry entry)
{
    return cost_entry_words[static_cast<std::size_t>(entry)].words;
}

std::string term_words(const CostLine& line)
{
    const std::string name(words_of(line.entry));
    return line.rate ? name + " " + range_words(*line.given) + " x " + range_words(*line.rate)
                     : name + " " + range_words(*line.money);
}

std::string entry_list(const std::vector<CostEntry>& entries)
{
    std::vector<std::string> names;
    for (const CostEntry entry : entries)
        names.emplace_back(words_of(entry));
    return name_list(names);
}

/// Nobody builds a part of a vehicle.
std::string vehicles_words(double vehicles) { return grouped(std::ceil(vehicles)); }

std::string left_out(const std::vector<CostEntry>& missing, const std::string& option)
{
    return missing.empty()
               ? ""
               : " " + capitalised(entry_list(missing)) + " of \u201c" + option + "\u201d " +
                     (missing.size() == 1 ? "is" : "are") + " not known and left out.";
}

std::string range_of_crossing(const BreakEven& even)
{
    if (!even.least || (even.always && *even.least == *even.most))
        return "";
    const std::string reach = "; as far as costs are ranges, at " + vehicles_words(*even.least) +
                              " to " + vehicles_words(*even.most);
    return even.always ? reach : reach + ", or never";
}

} // namespace

std::string cost_arithmetic(const CostSum& cost, CostBasis basis, const std::string& currency)
{
    std::string terms;
    for (const CostLine& line : cost.lines)
        if (line.money && cost_entry_words[static_cast<std::size_t>(line.entry)].basis == basis)
            terms += (terms.empty() ? "" : " + ") + term_words(line);
    const Range& sum = basis == CostBasis::a_vehicle ? cost.a_vehicle : cost.once;
    return terms.empty() ? "nothing is known" : terms + " = " + money_words(sum, currency);
}

std::string programme_arithmetic(const CostSum& cost, const Programme& programme)
{
    if (!cost.programme)
        return "not known: [costs] does not give " + std::string(programme.volume ? "the years"
                                                                 : programme.years
                                                                     ? "the volume"
                                                                     : "volume and years");
    return range_words(*programme.volume) + " vehicles a year x " + range_words(*programme.years) +
           " years x " + range_words(cost.a_vehicle) + " + " + range_words(cost.once) + " = " +
           money_words(*cost.programme, programme.currency) + "; " +
           money_words(*cost.all_in, programme.currency) + " for each vehicle";
}

std::string missing_words(const CostSum& cost)
{
    return cost.complete() ? "" : entry_list(cost.missing) + ": not known";
}

std::string break_even_words(const BreakEvenBetween& between, const Comparison& comparison)
{
    const std::string& one = comparison.options[between.one].name;
    const std::string& other = comparison.options[between.other].name;
    const std::string& less = between.even.one_below ? one : other;
    const std::string& more = between.even.one_below ? other : one;
    const auto quoted = [](const std::string& name) { return "\u201c" + name + "\u201d"; };
    std::string words;
    if (between.even.alike)
        words = quoted(one) + " and " + quoted(other) + " cost the same";
    else if (between.even.vehicles)
        words = quoted(less) + " costs less than " + quoted(more) + " below " +
                vehicles_words(*between.even.vehicles) + " vehicles, and more above";
    else
        words = quoted(less) + " costs less than " + quoted(more) + " at any number of vehicles";
    return words + range_of_crossing(between.even) + "." + left_out(between.one_missing, one) +
           left_out(between.other_missing, other);
}

} // namespace glim
