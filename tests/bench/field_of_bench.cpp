#include "bench/measures.h"

#include "geometry/direction_grid.h"

namespace glim::bench {

std::vector<Direction> directions_of_field(const Study& study, Angle step)
{
    const Field field{{{degrees(-45), degrees(80), degrees(-15), degrees(15)}}};
    const LampFrame frame{study.vehicle.forward, study.vehicle.outboard(Side::left),
                          study.vehicle.up};
    std::vector<Direction> directions;
    for (const Bearing& b : grid_of(field, step).nodes)
        directions.push_back(direction_of(b, frame));
    return directions;
}

std::vector<Direction> every(const std::vector<Direction>& directions, std::size_t nth)
{
    std::vector<Direction> some;
    for (std::size_t i = 0; i < directions.size(); i += nth)
        some.push_back(directions[i]);
    return some;
}

std::string with_threads(const std::string& measure, unsigned threads)
{
    return measure + ", " + std::to_string(threads) + (threads == 1 ? " thread" : " threads");
}

} // namespace glim::bench
