#include "judgement/plan.h"

#include "judgement/category.h"
#include "judgement/conditions.h"
#include "judgement/light_rows.h"
#include "judgement/new_look.h"
#include "judgement/place_verdict.h"

#include <algorithm>

namespace glim {

namespace {

/// Where samples are held against contours by default.
constexpr Angle coarse_step = degrees(5);

class Planner {
public:
    Planner(const Study& study, const PreparedScene& scene, Angle step)
        : study_(study), scene_(scene), step_(step)
    {
    }

    Plan plan(std::span<const std::size_t> checks)
    {
        for (const std::size_t c : checks)
            plan_.checks.push_back(ask(study_.checks[c]));
        complaints_.throw_if_any();
        number_directions();
        return std::move(plan_);
    }

private:
    AskedCheck ask(const Check& check)
    {
        AskedCheck asked{
            &check, &study_.tables[check.table], asked_lamps(study_, scene_, check), {}};
        for (const RuleRow* row : rows_under(*asked.table, check.rule))
            asked.rows.push_back(ask(*row, asked));
        add_proofs(asked);
        return asked;
    }

    /// The rows that proofs of the check's own rows consist of and that speak of a lamp asked with
    /// photometric data, each once.
    void add_proofs(AskedCheck& check)
    {
        const std::size_t own = check.rows.size();
        for (std::size_t i = 0; i < own; ++i)
            for (const RuleRow* row : proof_rows(*check.rows[i].row, study_)) {
                const bool known =
                    std::any_of(check.rows.begin() + static_cast<std::ptrdiff_t>(own),
                                check.rows.end(), [&](const AskedRow& r) { return r.row == row; });
                if (!known && concerns_light_of(check, *row))
                    check.rows.push_back(ask_proof(
                        *row, check, study_.table_named(check.rows[i].row->proof->table)));
            }
    }

    bool concerns_light_of(const AskedCheck& check, const RuleRow& row) const
    {
        const auto& lamps = check.lamps.standings;
        return std::any_of(lamps.begin(), lamps.end(), [&](const LampStanding& lamp) {
            return study_.light_of(lamp.lamp) && speaks_of(row, study_.lamps[lamp.lamp].function);
        });
    }

    AskedRow ask_proof(const RuleRow& row, const AskedCheck& check, const RuleTable* table)
    {
        AskedRow asked{.row = &row, .lamps = {}, .together = {}, .proof_from = table};
        for (const LampStanding& lamp : check.lamps.standings)
            asked.lamps.push_back(ask(row, *check.check, {lamp}));
        return asked;
    }

    AskedRow ask(const RuleRow& row, const AskedCheck& check)
    {
        AskedRow asked{.row = &row, .lamps = {}, .together = {}, .proof_from = nullptr};
        const Reached reached = reach_of_row(study_, *check.check, row.id);
        for (std::size_t i = 0; i < check.lamps.standings.size(); ++i) {
            Asked lamp = ask(row, *check.check, {check.lamps.standings[i]});
            if (!reached.directly && !reached.through_others)
                lamp.not_applicable = Because::condition_does_not_hold;
            else if (check.lamps.consulted[i] ? !reached.through_others : !reached.directly)
                lamp.not_applicable = Because::another_lamp;
            asked.lamps.push_back(std::move(lamp));
        }
        if (row.answered_by != AnsweredBy::together)
            return asked;
        for (const auto& lamps_of_side : by_side(asked.lamps)) {
            complain_if_axes_differ(row, *check.check, lamps_of_side);
            std::vector<LampStanding> together;
            together.reserve(lamps_of_side.size());
            for (const Asked* lamp : lamps_of_side)
                together.push_back(lamp->lamp);
            asked.together.push_back(ask(row, *check.check, together));
        }
        return asked;
    }

    /// The lamps that the row speaks of, left and right; one on the median plane is on both.
    std::vector<std::vector<const Asked*>> by_side(const std::vector<Asked>& lamps) const
    {
        std::vector<const Asked*> left, right, median;
        for (const Asked& lamp : lamps) {
            if (lamp.not_applicable)
                continue;
            const Side side = plan_.looks[lamp.look].side;
            (side == Side::median ? median : side == Side::left ? left : right).push_back(&lamp);
        }
        std::vector<std::vector<const Asked*>> sides;
        for (auto* side : {&left, &right}) {
            if (side->empty())
                continue;
            side->insert(side->end(), median.begin(), median.end());
            sides.push_back(*side);
        }
        if (sides.empty() && !median.empty())
            sides.push_back(median);
        return sides;
    }

    Asked ask(const RuleRow& row, const Check& check, std::vector<LampStanding> lamps)
    {
        const Obstacles obstacles = obstacles_for(row);
        for (LampStanding& lamp : lamps)
            lamp.obstacles = obstacles;
        Asked asked;
        asked.lamp = lamps.front();
        asked.look = look_at(lamps, row.axis, check.state.empty() ? row.state : check.state);
        asked.field = row.field;
        const Lamp& lamp = study_.lamps[lamps.front().lamp];
        const LampLook& look = plan_.looks[asked.look];
        asked.without_light = asks_light(row.criterion) && !look.light;
        if (speaks_of(row, lamp.function))
            apply_conditions(row, asked);
        else
            asked.not_applicable = Because::another_function;
        for (std::size_t i = 0; i < row.relaxations.size() && !asked.relaxation; ++i)
            if (hold(row.relaxations[i].when, asked, category_of(asked))) {
                asked.relaxation = i;
                asked.field = row.relaxations[i].field;
            }
        if (!asked.not_applicable && !asked.without_light)
            asked.multiplier = multiplier_of(row, asked);
        return asked;
    }

    bool hold(const std::vector<Condition>& conditions, const Asked& asked,
              const std::string& category) const
    {
        return all_hold(conditions, study_, study_.lamps[asked.lamp.lamp], plan_.looks[asked.look],
                        category);
    }

    std::string category_of(const Asked& asked) const
    {
        return asked.category ? asked.category->counts() : study_.lamps[asked.lamp.lamp].category;
    }

    /// Where no category is known, the row may apply as long as one of those that the gap can give
    /// would do.
    void apply_conditions(const RuleRow& row, Asked& asked)
    {
        const Lamp& lamp = study_.lamps[asked.lamp.lamp];
        if (const RuleRow* gap_row = row_of_category(row, lamp.function, study_))
            asked.category = category_by_gap(std::get<GapToLamp>(gap_row->criterion),
                                             gap_verdict(*gap_row, asked), lamp.category);
        if (hold(row.when, asked, category_of(asked)))
            return;
        if (asked.category && category_of(asked).empty())
            asked.category_open =
                std::any_of(asked.category->possible.begin(), asked.category->possible.end(),
                            [&](const std::string& c) { return hold(row.when, asked, c); });
        if (!asked.category_open)
            asked.not_applicable = Because::condition_does_not_hold;
    }

    /// By the gap of this lamp to others; where that is not known, anything that a gap could give.
    Multiplier multiplier_of(const RuleRow& row, const Asked& asked)
    {
        const RuleRow* gap_row = row_of_multiplier(row, study_);
        return gap_row ? multiplier_from(std::get<GapToLamp>(gap_row->criterion),
                                         gap_verdict(*gap_row, asked))
                       : Multiplier{};
    }

    /// Several rows ask for the same gap, which is measured once.
    LampVerdict gap_verdict(const RuleRow& gap_row, const Asked& asked)
    {
        for (const MeasuredGap& known : gaps_)
            if (known.row == &gap_row && known.lamp == asked.lamp.lamp &&
                known.twin == asked.lamp.twin)
                return known.verdict;
        Asked measured;
        measured.look = asked.look;
        measured.lamp = asked.lamp;
        gaps_.push_back(
            {&gap_row, asked.lamp.lamp, asked.lamp.twin,
             place_verdict(gap_row, measured, plan_.looks[asked.look], study_, scene_)});
        return gaps_.back().verdict;
    }

    static Obstacles obstacles_for(const RuleRow& row)
    {
        if (asks_light(row.criterion)) // the file knows what was approved with the lamp
            return Obstacles::all;
        const bool counted = row.approved_parts == ApprovedParts::counted;
        if (std::holds_alternative<LeastArea>(row.criterion))
            return counted ? Obstacles::all : Obstacles::without_approved;
        return counted ? Obstacles::approved_too : Obstacles::all;
    }

    std::size_t look_at(const std::vector<LampStanding>& lamps, ReferenceAxis axis,
                        const std::string& state)
    {
        LampLook look = new_look(study_, scene_, lamps, axis, state);
        for (std::size_t i = 0; i < plan_.looks.size(); ++i)
            if (same_view(plan_.looks[i], look))
                return i;
        plan_.looks.push_back(std::move(look));
        plan_.standings.push_back(lamps);
        return plan_.looks.size() - 1;
    }

    void complain_if_axes_differ(const RuleRow& row, const Check& check,
                                 const std::vector<const Asked*>& lamps)
    {
        const LampFrame& first = plan_.looks[lamps.front()->look].frame;
        for (const Asked* lamp : lamps)
            if (!same_frame(plan_.looks[lamp->look].frame, first)) {
                complaints_.add({.file = study_.file, .line = 0, .column = 0, .byte = {}},
                                "check `" + check.name + "`: row `" + row.id +
                                    "` adds up the areas of lamps whose axes differ",
                                "ask lamps of one reference axis together");
                return;
            }
    }

    /// Directions of all rows become one sorted list a look, and rows point into it.
    void number_directions()
    {
        std::vector<DirectionGrid> grids; // one an asked lamp, in the order of for_each_looking
        for_each_looking([&](const RuleRow&, const Asked& asked) {
            grids.push_back(grid_of(asked.field, step_));
            auto& toward = plan_.looks[asked.look].toward;
            toward.insert(toward.end(), grids.back().nodes.begin(), grids.back().nodes.end());
        });
        for (LampLook& look : plan_.looks) {
            std::sort(look.toward.begin(), look.toward.end(), by_v_then_h);
            look.toward.erase(std::unique(look.toward.begin(), look.toward.end()),
                              look.toward.end());
            plan_.certify.emplace_back(look.toward.size());
        }
        auto grid = grids.begin();
        for_each_looking([&](const RuleRow& row, Asked& asked) {
            asked.at = places_of(grid->nodes, plan_.looks[asked.look]);
            asked.weights = std::move(grid->weights);
            ++grid;
            certify(row, asked);
        });
    }

    /// Of those nodes that the look has.
    static std::vector<std::size_t> places_of(const std::vector<Bearing>& nodes,
                                              const LampLook& look)
    {
        std::vector<std::size_t> places;
        for (const Bearing& b : nodes) {
            const auto found =
                std::lower_bound(look.toward.begin(), look.toward.end(), b, by_v_then_h);
            if (found != look.toward.end() && *found == b)
                places.push_back(static_cast<std::size_t>(found - look.toward.begin()));
        }
        return places;
    }

    void certify(const RuleRow& row, const Asked& asked)
    {
        const Certify how = study_.sampling.certify;
        if (how == Certify::nowhere && !must_be_certified(row))
            return;
        const std::vector<std::size_t> places =
            how == Certify::everywhere
                ? asked.at
                : places_of(grid_of(asked.field, std::max(step_, coarse_step)).nodes,
                            plan_.looks[asked.look]);
        for (const std::size_t at : places)
            plan_.certify[asked.look][at] = true;
    }

    template <class Do>
    void for_each_looking(const Do& act)
    {
        for (AskedCheck& check : plan_.checks)
            for (AskedRow& row : check.rows) {
                for (auto* list : {&row.lamps, &row.together})
                    for (Asked& asked : *list)
                        if (looks_in_directions(*row.row, asked))
                            act(*row.row, asked);
            }
    }

    struct MeasuredGap {
        const RuleRow* row;
        LampId lamp;
        bool twin;
        LampVerdict verdict;
    };

    const Study& study_;
    const PreparedScene& scene_;
    Angle step_;
    Complaints complaints_;
    Plan plan_;
    std::vector<MeasuredGap> gaps_;
};

} // namespace

Plan plan_of(const Study& study, const PreparedScene& scene, std::span<const std::size_t> checks,
             Angle step)
{
    return Planner(study, scene, step).plan(checks);
}

bool looks_in_directions(const RuleRow& row, const Asked& asked)
{
    return asks_directions(row.criterion) && !asked.not_applicable && !asked.without_light &&
           !asked.category_open;
}

void ask_what_outcomes_need(Plan& plan)
{
    plan.visible_only.clear();
    for (const LampLook& look : plan.looks)
        plan.visible_only.push_back(!look.light);
    for (const AskedCheck& check : plan.checks)
        for (const AskedRow& row : check.rows)
            if (asks_directions(row.row->criterion) && must_be_certified(*row.row))
                for (const auto* list : {&row.lamps, &row.together})
                    for (const Asked& asked : *list)
                        plan.visible_only[asked.look] = false;
}

bool must_be_certified(const RuleRow& row)
{
    if (std::holds_alternative<MostIntensity>(row.criterion)) // the file alone decides
        return false;
    const auto* least = std::get_if<LeastArea>(&row.criterion);
    return !least || least->proof_if_hidden;
}

bool by_v_then_h(const Bearing& a, const Bearing& b) { return a.v != b.v ? a.v < b.v : a.h < b.h; }

} // namespace glim
