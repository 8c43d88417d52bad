#include "specimens/knife_edge.h"

#include "judgement/check_study.h"
#include "judgement/made_rules.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

namespace glim::test {

Findings behind_knife_edge(const Field& field, Criterion criterion)
{
    RuleRow row = shapes::made_row("row", std::move(criterion));
    row.field = field;
    return check_study(shapes::asking(shapes::lamp_behind(shapes::plate(Point::Zero(), 60, 40),
                                                          {shapes::wall(40, 50, 500, -300, 300)}),
                                      "row", {row}));
}

Findings behind_knife_edge(const Field& field)
{
    return behind_knife_edge(field, LeastArea{square_millimetres(1250)});
}

double knife_edge_h_deg(double v_deg)
{
    const auto seen = [&](double h) {
        return 40 * cos(degrees(v_deg)) * (80 * cos(degrees(h)) - 40 * sin(degrees(h)));
    };
    double low = 18, high = 63;
    for (int i = 0; i < 60; ++i)
        (seen((low + high) / 2) > 1250 ? low : high) = (low + high) / 2;
    return low;
}

std::shared_ptr<const ChartSubject> subject_of(const Findings& findings)
{
    const CheckFindings& check = findings.checks.front();
    const RowFindings& row = check.rows.front();
    const LampVerdict& verdict = row.lamps.front();
    return chart_subject(check, row, verdict, findings.looks[verdict.look],
                         findings.sampling.hairline);
}

} // namespace glim::test
