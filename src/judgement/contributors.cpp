#include "judgement/contributors.h"

#include "judgement/build_statistics.h"

namespace glim {

namespace {

std::vector<double> figures_of(const BuildRuns& runs, std::size_t verdict)
{
    std::vector<double> figures;
    figures.reserve(runs.size());
    for (const std::vector<BuildLook>& run : runs)
        figures.push_back(in_mm2(run[verdict].figure));
    return figures;
}

void add_tolerance(std::size_t tolerance, const std::vector<BuildFactor>& factors,
                   std::vector<Contributor>& all)
{
    Contributor whole{ContributorKind::tolerance, tolerance, {}, {}};
    for (std::size_t f = 0; f < factors.size(); ++f)
        if (factors[f].tolerance == tolerance)
            whole.factors.push_back(f);
    if (whole.factors.empty())
        return;
    all.push_back(whole);
    if (whole.factors.size() > 1)
        for (const std::size_t f : whole.factors)
            all.push_back({ContributorKind::way, tolerance, factors[f].way, {f}});
}

} // namespace

std::vector<Contributor> contributors_of(const Study& study,
                                         const std::vector<BuildFactor>& factors)
{
    const std::vector<Tolerance>& tolerances = study.variation.tolerances;
    Contributor part{ContributorKind::part, 0, {}, {}};
    Contributor installation{ContributorKind::installation, 0, {}, {}};
    for (std::size_t f = 0; f < factors.size(); ++f)
        (tolerances[factors[f].tolerance].origin == ToleranceOrigin::part ? part : installation)
            .factors.push_back(f);
    std::vector<Contributor> all;
    if (!part.factors.empty() && !installation.factors.empty())
        all = {part, installation};
    for (std::size_t t = 0; t < tolerances.size(); ++t)
        add_tolerance(t, factors, all);
    return all;
}

std::vector<VarianceShare> variance_shares(const MixedRuns& runs, std::size_t verdict,
                                           std::size_t shifts)
{
    const std::vector<double> a = figures_of(runs.first, verdict);
    const std::vector<double> b = figures_of(runs.other, verdict);
    std::vector<VarianceShare> shares;
    for (const BuildRuns& mixed : runs.mixed) {
        const std::vector<double> m = figures_of(mixed, verdict);
        if (const auto share = variance_share({a, b, m}, shifts))
            shares.push_back(*share);
    }
    return shares;
}

} // namespace glim
