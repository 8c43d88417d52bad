#include "model/criterion.h"

namespace glim {

bool asks_directions(const Criterion& criterion)
{
    return std::holds_alternative<LeastArea>(criterion) ||
           std::holds_alternative<NoObstacle>(criterion) ||
           std::holds_alternative<MostHidden>(criterion) ||
           std::holds_alternative<LeastIntensity>(criterion);
}

} // namespace glim
