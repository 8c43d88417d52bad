#include "judgement/made_rules.h"

namespace glim::shapes {

RuleRow made_row(const std::string& id, Criterion criterion)
{
    RuleRow row;
    row.id = id;
    row.title = id;
    row.citation = {Provenance::memory, "invented for this test", ""};
    row.criterion = std::move(criterion);
    row.approved_parts = std::holds_alternative<LeastArea>(row.criterion) ? ApprovedParts::counted
                                                                          : ApprovedParts::ignored;
    return row;
}

RuleRow made_row(const std::string& id, Criterion criterion, double h0, double h1, double v0,
                 double v1)
{
    RuleRow row = made_row(id, std::move(criterion));
    row.field = {{rectangle(h0, h1, v0, v1)}};
    return row;
}

FieldRectangle rectangle(double h0, double h1, double v0, double v1)
{
    return {degrees(h0), degrees(h1), degrees(v0), degrees(v1)};
}

Study asking(Study study, const std::string& rule, std::vector<RuleRow> rows,
             std::vector<Rule> rules)
{
    RuleTable table;
    table.name = "test";
    table.regulation = "invented for this test";
    table.rows = std::move(rows);
    table.rules = std::move(rules);
    study.tables.push_back(std::move(table));
    study.checks.push_back({"ask", study.tables.size() - 1, rule, {LampId{0}}});
    return study;
}

LampId add_lamp(Study& study, const std::string& name, LampFunction function, TriangleMesh lit)
{
    Surface lens;
    lens.name = name + " lens";
    lens.role = Role::emitting;
    lens.mirror = MirrorRule::no;
    lens.mesh = std::move(lit);
    Lamp lamp;
    lamp.name = name;
    lamp.function = function;
    lamp.side = Side::left;
    lamp.emits = {study.surfaces.add(std::move(lens))};
    return study.lamps.add(std::move(lamp));
}

} // namespace glim::shapes
