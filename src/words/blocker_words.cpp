#include "words/blocker_words.h"

#include "words/look_words.h"
#include "words/numbers.h"
#include "words/text_block.h"

#include <cmath>

namespace glim {

namespace {

/// More than these nobody reads on a terminal; result.json has them all.
constexpr std::size_t most_blockers = 8;

/// Less than this reads as nothing, so it is left out.
constexpr Area least_worth_telling = square_millimetres(0.5);

std::string whole_mm2(Area area) { return with_decimals(in_mm2(area), 0) + " mm2"; }

bool is_worth_telling(const Blocker& b)
{
    return b.taken_at_worst() >= least_worth_telling ||
           b.taken_on_mean().value_or(Area()) >= least_worth_telling;
}

bool fails(const LampVerdict& verdict)
{
    return verdict.coverage.directions_met < verdict.coverage.directions;
}

std::string range_mm(const char* axis, double least, double most)
{
    return std::string(axis) + " " + rounded(std::floor(least), 0) + ".." +
           rounded(std::ceil(most), 0);
}

} // namespace

std::vector<const Blocker*> told_blockers(const LampVerdict& verdict, const LampLook& look)
{
    const SeenArea& seen = look.seen[worst_at(verdict)];
    const Area hidden = seen.lens - look.visible(worst_at(verdict));
    std::vector<const Blocker*> blockers;
    // What takes something is sampled; where the exact area says that nothing is hidden, it wins.
    if (!fails(verdict) && hidden < least_worth_telling)
        return blockers;
    for (const Blocker& b : verdict.blockers)
        if (is_worth_telling(b) && blockers.size() < most_blockers)
            blockers.push_back(&b);
    return blockers;
}

std::string box_words(const Box& box)
{
    return range_mm("x", box.least.x(), box.most.x()) + ", " +
           range_mm("y", box.least.y(), box.most.y()) + ", " +
           range_mm("z", box.least.z(), box.most.z()) + " mm";
}

std::vector<std::string> blocker_table(const LampVerdict& verdict, const LampLook& look)
{
    std::vector<std::vector<std::string>> rows = {{"surface", "at worst", "of that alone"}};
    if (fails(verdict))
        rows.front().emplace_back("where it fails");
    for (const Blocker* b : told_blockers(verdict, look)) {
        rows.push_back({surface_label(b->surface, b->twin, look), whole_mm2(b->taken_at_worst()),
                        whole_mm2(b->alone_at_worst)});
        if (fails(verdict)) {
            const std::optional<Area> mean = b->taken_on_mean();
            rows.back().push_back(mean ? whole_mm2(*mean) : "-");
        }
    }
    if (rows.size() == 1)
        return {};
    return aligned_rows(rows, {1, 2, 3});
}

std::string patch_words(const LampVerdict& verdict, const LampLook& look)
{
    const std::vector<const Blocker*> blockers = told_blockers(verdict, look);
    if (blockers.empty() || blockers.front()->patch.empty())
        return {};
    return "patch of " + surface_label(blockers.front()->surface, blockers.front()->twin, look) +
           ": " + box_words(blockers.front()->patch);
}

} // namespace glim
