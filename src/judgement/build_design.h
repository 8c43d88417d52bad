#pragma once

#include "judgement/sobol_sequence.h"
#include "judgement/tolerance_findings.h"

#include <span>

namespace glim {

/// Which builds are looked at: two sets that know nothing of each other, and mixtures of them. The
/// same number always stands for the same build, whatever else is asked: common random numbers.
class BuildDesign {
public:
    /// Independent shifts of the sequence; the builds of one stand behind each other.
    static constexpr std::size_t shifts = 16;
    /// For contributions, so many builds of each shift.
    static constexpr std::size_t most_mixed = 64;

    /// `tolerances` outlives it. The number of builds is rounded up to a multiple of `shifts`.
    BuildDesign(const std::vector<Tolerance>& tolerances, std::vector<BuildFactor> factors,
                const ToleranceTask& task);

    std::size_t builds() const { return each_ * shifts; }
    /// Builds of the first set of which there are mixtures; `mixed_place` tells which they are.
    std::size_t mixed_builds() const;
    std::size_t mixed_place(std::size_t i) const;

    /// Deviations of a build of the first set, one a factor; those of each tolerance multiplied by
    /// its `scale`, where that is given.
    std::vector<double> build(std::size_t i, std::span<const double> scale = {}) const;
    /// Of the second set, at the places that mixtures have.
    std::vector<double> other(std::size_t i) const;
    /// The first set's with these factors from the second.
    std::vector<double> mixed(std::size_t i, std::span<const std::size_t> factors) const;

private:
    std::vector<double> point(std::size_t i) const;
    std::vector<double> deviations(std::span<const double> shares) const;

    const std::vector<Tolerance>& tolerances_;
    std::vector<BuildFactor> factors_;
    SobolSequence sequence_;
    std::size_t each_;
};

} // namespace glim
