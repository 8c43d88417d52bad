#include "model/asked_checks.h"

#include <numeric>

namespace glim {

std::vector<std::size_t> asked_checks(const Study& study, const std::vector<std::size_t>& named)
{
    if (!named.empty())
        return named;
    std::vector<std::size_t> all(study.checks.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

} // namespace glim
