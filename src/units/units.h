#pragma once

#include "units/quantity.h"

namespace glim {

/// Kept in degrees, because every file we read and write says degrees: 10 read is 10 written.
using Angle = Quantity<struct AngleKind>;
using Length = Quantity<struct LengthKind>;
using Area = Quantity<struct AreaKind>;
using Volume = Quantity<struct VolumeKind>;
using SolidAngle = Quantity<struct SolidAngleKind>;
using Intensity = Quantity<struct IntensityKind>;
using LuminousFlux = Quantity<struct LuminousFluxKind>;

constexpr Angle degrees(double count) { return Angle::of(count); }
constexpr double in_degrees(Angle a) { return a.count(); }

constexpr Length millimetres(double count) { return Length::of(count); }
constexpr double in_mm(Length l) { return l.count(); }

constexpr Area square_millimetres(double count) { return Area::of(count); }
constexpr double in_mm2(Area a) { return a.count(); }

constexpr Volume cubic_millimetres(double count) { return Volume::of(count); }
constexpr double in_mm3(Volume v) { return v.count(); }

constexpr SolidAngle steradians(double count) { return SolidAngle::of(count); }
constexpr double in_steradians(SolidAngle s) { return s.count(); }

constexpr Intensity candelas(double count) { return Intensity::of(count); }
constexpr double in_candelas(Intensity i) { return i.count(); }

constexpr LuminousFlux lumens(double count) { return LuminousFlux::of(count); }
constexpr double in_lumens(LuminousFlux f) { return f.count(); }

constexpr Area operator*(Length a, Length b) { return square_millimetres(in_mm(a) * in_mm(b)); }

/// One candela into one steradian is one lumen.
constexpr LuminousFlux operator*(Intensity i, SolidAngle s)
{
    return lumens(in_candelas(i) * in_steradians(s));
}

} // namespace glim
