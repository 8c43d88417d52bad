#pragma once

#include "units/units.h"

namespace glim {

using Illuminance = Quantity<struct IlluminanceKind>;

constexpr Illuminance lux(double count) { return Illuminance::of(count); }
constexpr double in_lux(Illuminance e) { return e.count(); }

/// What a surface that far away and square to the light receives: intensity by distance squared.
/// Holds where the lamp is small beside the distance. Requires: `distance` is above 0.
constexpr Illuminance illuminance(Intensity intensity, Length distance)
{
    const double metres = in_mm(distance) / 1000;
    return lux(in_candelas(intensity) / (metres * metres));
}

/// What gives that illuminance from so far away, as goniometers and screens measure it. Requires:
/// as illuminance.
constexpr Intensity intensity_from(Illuminance measured, Length distance)
{
    const double metres = in_mm(distance) / 1000;
    return candelas(in_lux(measured) * metres * metres);
}

} // namespace glim
