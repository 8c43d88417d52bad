#include "model/criterion.h"

namespace glim {

bool asks_directions(const Criterion& criterion)
{
    return std::holds_alternative<LeastArea>(criterion) ||
           std::holds_alternative<NoObstacle>(criterion) ||
           std::holds_alternative<MostHidden>(criterion) || asks_light(criterion);
}

bool asks_light(const Criterion& criterion)
{
    return std::holds_alternative<LeastIntensity>(criterion) ||
           std::holds_alternative<MostIntensity>(criterion) ||
           std::holds_alternative<LightTable>(criterion);
}

} // namespace glim
