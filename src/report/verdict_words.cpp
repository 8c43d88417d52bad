#include "report/verdict_words.h"

#include "report/look_words.h"
#include "report/numbers.h"

#include <algorithm>

namespace glim {

namespace {

/// More than these nobody reads on a terminal; result.json has them all.
constexpr std::size_t most_ranges = 5;
constexpr std::size_t most_blockers = 8;

std::string margin_words(Area margin)
{
    return margin < Area() ? area_words(-margin) + " too little"
                           : area_words(margin) + " more than needed";
}

std::string precision_words(const LampLook& look, std::size_t at)
{
    if (is_exact(look, at))
        return "exact";
    return "estimated: likely within " + area_words(uncertainty(look, at)) + ", surely from " +
           area_words(look.low(at)) + " to " + area_words(look.high(at));
}

std::string surface_words(const Blocker& blocker, const LampLook& look)
{
    if (!blocker.twin)
        return blocker.surface;
    return blocker.surface + (look.twin ? " (mirrored)" : " (far side)");
}

std::string whole_mm2(Area area) { return with_decimals(in_mm2(area), 0) + " mm2"; }

/// Less than this reads as nothing, so it is left out.
constexpr Area least_worth_telling = square_millimetres(0.5);

bool is_worth_telling(const Blocker& b)
{
    return b.taken_at_worst() >= least_worth_telling || b.taken_on_mean() >= least_worth_telling;
}

} // namespace

std::string demand_words(const LampVerdict& verdict, const LampLook& look)
{
    return "at least " + area_words(verdict.needed) + " in view, " +
           field_words(verdict.field, speech_of(look));
}

std::string least_words(const LampVerdict& verdict, const LampLook& look)
{
    const std::size_t at = worst_at(verdict);
    return area_words(verdict.least_visible) + " (" + precision_words(look, at) + "), " +
           margin_words(verdict.margin) + "; with nothing in the way " +
           area_words(look.seen[at].lens);
}

std::string worst_words(const LampVerdict& verdict, const LampLook& look)
{
    const Bearing& b = look.toward[worst_at(verdict)];
    return bearing_words(b, speech_of(look)) + " (" + bearing_figures(b) + ")";
}

std::string coverage_words(const Coverage& c)
{
    std::string words =
        std::to_string(c.directions_met) + " of " + counted(c.directions, "direction");
    if (c.solid_angle > SolidAngle())
        words += ", " +
                 share_words(in_steradians(c.solid_angle_met), in_steradians(c.solid_angle)) +
                 " of the field's solid angle";
    return words;
}

std::vector<std::string> uncovered_words(const LampVerdict& verdict, const LampLook& look)
{
    std::vector<std::string> lines;
    const std::size_t shown = std::min(verdict.uncovered.size(), most_ranges);
    for (std::size_t i = 0; i < shown; ++i) {
        const UncoveredRange& u = verdict.uncovered[i];
        lines.push_back(range_words({u.h_least, u.h_most, u.v_least, u.v_most}, speech_of(look)) +
                        ": " + counted(u.directions, "direction") + ", as little as " +
                        area_words(u.least_visible) + " in view");
    }
    if (const std::size_t more = verdict.uncovered.size() - shown; more > 0)
        lines.push_back("and " + counted(more, "smaller range"));
    return lines;
}

std::vector<std::string> blocker_table(const LampVerdict& verdict, const LampLook& look)
{
    std::vector<std::vector<std::string>> rows;
    const SeenArea& seen = look.seen[worst_at(verdict)];
    const Area hidden = seen.lens - look.visible(worst_at(verdict));
    const bool fails = verdict.coverage.directions_met < verdict.coverage.directions;
    // What takes something is sampled; where the exact area says that nothing is hidden, it wins.
    if (!fails && hidden < least_worth_telling)
        return {};
    for (const Blocker& b : verdict.blockers) {
        if (!is_worth_telling(b) || rows.size() == most_blockers)
            continue;
        rows.push_back(
            {surface_words(b, look), whole_mm2(b.taken_at_worst()), whole_mm2(b.alone_at_worst)});
        if (fails)
            rows.back().push_back(whole_mm2(b.taken_on_mean()));
    }
    if (rows.empty())
        return {};
    std::vector<std::string> header{"surface", "at worst", "of that alone"};
    if (fails)
        header.emplace_back("where it fails");
    rows.insert(rows.begin(), header);
    return aligned_rows(rows, {1, 2, 3});
}

} // namespace glim
