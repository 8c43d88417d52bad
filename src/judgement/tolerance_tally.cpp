#include "judgement/tolerance_tally.h"

#include "judgement/build_statistics.h"

#include <algorithm>
#include <map>

namespace glim {

namespace {

/// Of areas sampled with different neighbours; nearer figures are the same.
constexpr Area same_area = square_millimetres(0.01);

bool is_of_area(const AskedRow& row)
{
    return std::holds_alternative<LeastArea>(row.row->criterion);
}

/// Whether the check hangs on verdicts that no build changes.
bool depends_on_others(const AskedCheck& check)
{
    return std::any_of(check.rows.begin(), check.rows.end(), [](const AskedRow& row) {
        const bool applies = std::any_of(row.lamps.begin(), row.lamps.end(),
                                         [](const Asked& a) { return !a.not_applicable; });
        return !row.proof_from && applies &&
               (!asks_directions(row.row->criterion) || asks_light(row.row->criterion));
    });
}

std::vector<DecidingDirection> directions_of(const std::map<std::size_t, std::size_t>& counts,
                                             const LampLook& look)
{
    std::vector<DecidingDirection> directions;
    directions.reserve(counts.size());
    for (const auto& [at, builds] : counts)
        directions.push_back({look.toward[at], builds});
    std::stable_sort(directions.begin(), directions.end(),
                     [](const auto& a, const auto& b) { return a.builds > b.builds; });
    return directions;
}

} // namespace

ToleranceTally::ToleranceTally(const BuiltLooks& looks, OutcomeBook& book,
                               std::vector<BuildLook> drawn)
    : looks_(looks), book_(book), drawn_(std::move(drawn))
{
}

void ToleranceTally::add_to(ToleranceFindings& found, const BuildRuns& runs)
{
    BuildRuns done;
    std::copy_if(runs.begin(), runs.end(), std::back_inserter(done),
                 [&](const auto& run) { return run.size() == looks_.followed().size(); });
    if (looks_.followed().empty())
        done.resize(1);
    found.builds = done.size();
    if (done.empty())
        return;
    std::size_t met = 0;
    for (const std::vector<BuildLook>& run : done)
        met += meets_all(run, book_) ? 1 : 0;
    found.all_checks = share_of(met, done.size());
    for (std::size_t v = 0; v < looks_.followed().size(); ++v)
        found.verdicts.push_back(verdict(v, done));
    for (std::size_t c = 0; c < looks_.plan().checks.size(); ++c)
        found.checks.push_back(check(c, done));
}

ToleratedVerdict ToleranceTally::verdict(std::size_t place, const BuildRuns& runs) const
{
    const Followed& f = looks_.followed()[place];
    const AskedRow& row = looks_.row_of(f);
    const LampLook& look = looks_.look_of(f);
    ToleratedVerdict verdict;
    verdict.check = f.check;
    verdict.row = row.row->id;
    verdict.look = looks_.asked_of(f).look;
    verdict.lamp = look.name;
    verdict.twin = look.twin;
    verdict.together = f.together;
    verdict.of_area = is_of_area(row);
    if (verdict.of_area)
        verdict.needed_mm2 = in_mm2(std::get<LeastArea>(row.row->criterion).area);
    verdict.as_drawn_mm2 = in_mm2(drawn_[place].figure);
    verdict.worst_as_drawn = look.toward[drawn_[place].at];
    std::map<std::size_t, std::size_t> deciding;
    std::vector<double> figures;
    std::size_t met = 0;
    for (const std::vector<BuildLook>& run : runs) {
        met += run[place].outcome == Outcome::met ? 1 : 0;
        ++deciding[run[place].at];
        figures.push_back(in_mm2(run[place].figure));
    }
    verdict.share = share_of(met, runs.size());
    verdict.spread = spread_of(std::move(figures));
    verdict.deciding = directions_of(deciding, look);
    return verdict;
}

ToleratedCheck ToleranceTally::check(std::size_t place, const BuildRuns& runs)
{
    const AskedCheck& asked = looks_.plan().checks[place];
    ToleratedCheck check;
    check.name = asked.check->name;
    check.as_drawn = outcomes_of(drawn_, book_)[place];
    std::map<Outcome, std::size_t> outcomes;
    for (const std::vector<BuildLook>& run : runs)
        ++outcomes[outcomes_of(run, book_)[place]];
    for (const auto& [outcome, builds] : outcomes)
        check.outcomes.push_back({outcome, builds});
    check.share = share_of(outcomes[Outcome::met], runs.size());
    check.deciding = deciding(place);
    check.depends_on_others = depends_on_others(asked);
    return check;
}

/// What decides as drawn; of two sides together the one that stands worse.
std::optional<std::size_t> ToleranceTally::deciding(std::size_t check) const
{
    const std::optional<Deciding>& drawn = book_.as_drawn()[check].deciding;
    std::optional<std::size_t> found;
    for (std::size_t v = 0; drawn && v < looks_.followed().size(); ++v) {
        const Followed& f = looks_.followed()[v];
        if (f.check != check || f.row != drawn->row || f.together != drawn->together ||
            (!f.together && f.lamp != drawn->lamp))
            continue;
        const Area was = found ? drawn_[*found].figure : Area();
        const bool worse =
            is_of_area(looks_.row_of(f)) ? drawn_[v].figure < was : drawn_[v].figure > was;
        if (!found || worse)
            found = v;
    }
    return found;
}

void make_certain(ToleranceFindings& found)
{
    const auto certain = [](ShareOfBuilds& share) { share.low = share.high = share.share; };
    certain(found.all_checks);
    for (ToleratedCheck& check : found.checks)
        certain(check.share);
    for (ToleratedVerdict& verdict : found.verdicts)
        certain(verdict.share);
}

DirectionProof proof_of_directions(const BuiltLooks& looks, const BuildRuns& some,
                                   const BuildRuns& whole)
{
    DirectionProof proof;
    for (std::size_t i = 0; i < whole.size(); ++i) {
        if (whole[i].empty() || some[i].empty())
            continue;
        ++proof.builds;
        bool other = false, outcome = false;
        for (std::size_t v = 0; v < whole[i].size(); ++v) {
            const bool of_area = is_of_area(looks.row_of(looks.followed()[v]));
            const Area difference = some[i][v].figure - whole[i][v].figure;
            const Area worse = of_area ? difference : Area() - difference;
            proof.most_worse = std::max(proof.most_worse, worse);
            other = other || worse > same_area;
            outcome = outcome || some[i][v].outcome != whole[i][v].outcome;
        }
        proof.others_decide += other ? 1 : 0;
        proof.other_outcome += outcome ? 1 : 0;
    }
    return proof;
}

} // namespace glim
