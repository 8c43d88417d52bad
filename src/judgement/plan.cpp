#include "judgement/plan.h"

#include "judgement/lamp_frame.h"

#include <algorithm>
#include <iterator>

namespace glim {

namespace {

/// The centroid of the facets, weighed by area.
Point area_centroid(const TriangleMesh& mesh)
{
    Point sum = Point::Zero();
    double weight = 0;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        const double area = area_vector(mesh, f).norm();
        sum += area * (mesh.corner(f, 0) + mesh.corner(f, 1) + mesh.corner(f, 2)) / 3;
        weight += area;
    }
    return weight > 0 ? Point(sum / weight) : box_of(mesh).centre();
}

bool before(const Bearing& a, const Bearing& b) { return a.v != b.v ? a.v < b.v : a.h < b.h; }

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
        AskedCheck asked{&check, &study_.tables[check.table], {}};
        const std::vector<LampStanding> lamps = standings_of(check);
        for (const RuleRow* row : rows_under(*asked.table, check.rule))
            asked.rows.push_back(ask(*row, check, lamps));
        return asked;
    }

    /// Mirror images are looked at only where they might see something else.
    std::vector<LampStanding> standings_of(const Check& check) const
    {
        std::vector<LampStanding> all(check.lamps.size());
        std::transform(check.lamps.begin(), check.lamps.end(), all.begin(), [](LampId lamp) {
            return LampStanding{lamp, false};
        });
        if (scene_.is_symmetric())
            return all;
        std::vector<LampStanding> twins;
        std::copy_if(all.begin(), all.end(), std::back_inserter(twins),
                     [&](const LampStanding& l) { return study_.lamps[l.lamp].paired; });
        for (LampStanding& twin : twins)
            twin.twin = true;
        all.insert(all.end(), twins.begin(), twins.end());
        return all;
    }

    AskedRow ask(const RuleRow& row, const Check& check, const std::vector<LampStanding>& lamps)
    {
        AskedRow asked{.row = &row, .lamps = {}, .together = {}};
        for (const LampStanding& lamp : lamps)
            asked.lamps.push_back(ask(row, {lamp}));
        if (row.answered_by != AnsweredBy::together)
            return asked;
        for (const auto& lamps_of_side : by_side(asked.lamps)) {
            complain_if_axes_differ(row, check, lamps_of_side);
            std::vector<LampStanding> together;
            together.reserve(lamps_of_side.size());
            for (const Asked* lamp : lamps_of_side)
                together.push_back(lamp->lamp);
            asked.together.push_back(ask(row, together));
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

    Asked ask(const RuleRow& row, const std::vector<LampStanding>& lamps)
    {
        Asked asked;
        asked.lamp = lamps.front();
        asked.look = look_at(lamps, row.axis);
        asked.field = row.field;
        const LampFunction function = study_.lamps[lamps.front().lamp].function;
        if (!row.functions.empty() &&
            std::find(row.functions.begin(), row.functions.end(), function) == row.functions.end())
            asked.not_applicable = Because::another_function;
        else if (!all_hold(row.when, asked.look))
            asked.not_applicable = Because::condition_does_not_hold;
        for (std::size_t i = 0; i < row.relaxations.size() && !asked.relaxation; ++i)
            if (all_hold(row.relaxations[i].when, asked.look)) {
                asked.relaxation = i;
                asked.field = row.relaxations[i].field;
            }
        return asked;
    }

    bool all_hold(const std::vector<Condition>& conditions, std::size_t look) const
    {
        return std::all_of(conditions.begin(), conditions.end(), [&](const Condition& c) {
            switch (c.quantity) {
            case Measured::overall_width:
                // The reader asks for the width wherever a row speaks of it.
                return study_.vehicle.overall_width && c.holds(*study_.vehicle.overall_width);
            case Measured::axis_height:
                return c.holds(plan_.looks[look].axis_height);
            }
            return false;
        });
    }

    std::size_t look_at(const std::vector<LampStanding>& lamps, ReferenceAxis axis)
    {
        LampLook look = new_look(lamps, axis);
        for (std::size_t i = 0; i < plan_.looks.size(); ++i)
            if (plan_.looks[i].name == look.name && plan_.looks[i].twin == look.twin &&
                same_frame(plan_.looks[i].frame, look.frame))
                return i;
        plan_.looks.push_back(std::move(look));
        plan_.standings.push_back(lamps);
        return plan_.looks.size() - 1;
    }

    LampLook new_look(const std::vector<LampStanding>& lamps, ReferenceAxis axis) const
    {
        const LampStanding& first = lamps.front();
        const Lamp& lamp = study_.lamps[first.lamp];
        const Placement across = study_.vehicle.across_median();
        LampLook look;
        for (const LampStanding& l : lamps)
            look.name += (look.name.empty() ? "" : " + ") + study_.lamps[l.lamp].name;
        look.function = lamp.function;
        look.side = first.twin ? other(lamp.side) : lamp.side;
        look.twin = first.twin;
        look.twin_is_alike = lamp.paired && scene_.is_symmetric();
        look.axis = axis;
        const Direction declared = lamp.axis.value_or(axis_of(study_.vehicle, lamp.side, axis));
        look.frame = lamp_frame(study_.vehicle, study_.grounds.front().ground, look.side,
                                first.twin ? across(declared) : declared, axis);
        const TriangleMesh lit = scene_.lit_surface_of(first);
        look.centre_assumed = !lamp.centre;
        look.centre = !lamp.centre ? area_centroid(lit)
                      : first.twin ? across(*lamp.centre)
                                   : *lamp.centre;
        look.axis_height = study_.grounds.front().ground.height_of(look.centre);
        for (const LampStanding& l : lamps)
            look.lit_face += area_of(scene_.lit_surface_of(l));
        return look;
    }

    static bool same_frame(const LampFrame& a, const LampFrame& b)
    {
        return a.forward.vector() == b.forward.vector() &&
               a.outboard.vector() == b.outboard.vector() && a.up.vector() == b.up.vector();
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
        std::vector<DirectionGrid> grids; // one an asked lamp, in the order of for_each_asked
        for_each_asked([&](const Asked& asked) {
            grids.push_back(grid_of(asked.field, step_));
            auto& toward = plan_.looks[asked.look].toward;
            toward.insert(toward.end(), grids.back().nodes.begin(), grids.back().nodes.end());
        });
        for (LampLook& look : plan_.looks) {
            std::sort(look.toward.begin(), look.toward.end(), before);
            look.toward.erase(std::unique(look.toward.begin(), look.toward.end()),
                              look.toward.end());
        }
        auto grid = grids.begin();
        for_each_asked([&](Asked& asked) {
            const auto& toward = plan_.looks[asked.look].toward;
            for (const Bearing& b : grid->nodes)
                asked.at.push_back(static_cast<std::size_t>(
                    std::lower_bound(toward.begin(), toward.end(), b, before) - toward.begin()));
            asked.weights = std::move(grid->weights);
            ++grid;
        });
    }

    template <class Do>
    void for_each_asked(const Do& act)
    {
        for (AskedCheck& check : plan_.checks)
            for (AskedRow& row : check.rows) {
                for (Asked& asked : row.lamps)
                    if (!asked.not_applicable)
                        act(asked);
                for (Asked& asked : row.together)
                    act(asked);
            }
    }

    const Study& study_;
    const PreparedScene& scene_;
    Angle step_;
    Complaints complaints_;
    Plan plan_;
};

} // namespace

Plan plan_of(const Study& study, const PreparedScene& scene, std::span<const std::size_t> checks,
             Angle step)
{
    return Planner(study, scene, step).plan(checks);
}

} // namespace glim
