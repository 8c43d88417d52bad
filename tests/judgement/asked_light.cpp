#include "judgement/asked_light.h"

#include "judgement/check_study.h"
#include "judgement/made_rules.h"

namespace glim::shapes {

LeastIntensity at_least_cd(double cd) { return {candelas(cd)}; }

Findings asked(Study study, Criterion criterion, double h0, double h1, double v0, double v1)
{
    return check_study(asking(std::move(study), "light",
                              {made_row("light", std::move(criterion), h0, h1, v0, v1)}));
}

const CheckFindings& answer(const Findings& findings) { return findings.checks.front(); }

const LampVerdict& verdict(const Findings& findings, std::size_t row)
{
    return findings.checks.front().rows[row].lamps.front();
}

double cd(const std::optional<Intensity>& intensity) { return in_candelas(intensity.value()); }

} // namespace glim::shapes
