#pragma once

#include "remedy/lens_gauge.h"
#include "remedy/lens_patch.h"

#include <optional>

namespace glim {

/// The least lens at a seat, found by measuring lenses.
struct LensFit {
    LensPatch patch;
    /// The widest lens measured that was not enough; its area is within `size_accuracy` of that of
    /// `patch`. None where the smallest lens tried was enough.
    std::optional<Length> too_small;
};

/// Between a lens that is enough and one that is not, as a share of the area.
inline constexpr double size_accuracy = 0.01;

/// Where nothing asks for a size, lenses are shown this wide.
inline constexpr Length nominal_lens = millimetres(20);

/// Where a lens of one shape may lie and how wide it may be.
struct LensPlace {
    const LensCarrier* carrier; ///< outlives it
    LensSeat seat;
    LensShape shape;
    Length largest; ///< across
};

/// Why there is no lens at a place.
enum class NoFit {
    too_large, ///< it would exceed the largest allowed
    no_room,   ///< the surface ends or is creased within it
    not_met,   ///< even the largest that there is room for is not enough
};

struct FitOrNot {
    std::optional<LensFit> fit;
    NoFit why = NoFit::not_met; ///< where there is none
};

/// What a lens has to show.
struct NeedsAsked {
    std::span<const NeedLook> looks;
    std::span<const AreaNeed> needs;
    /// Whether the lens found is measured once more in every one of them, and grows where that was
    /// not enough; else a check does so.
    bool verify = false;
};

/// Grows the lens until every need is met, by the areas that `gauge` measures; the lens found is
/// left in it. `first` is a guess of its area. Throws Stopped.
FitOrNot fit_lens(const LensPlace& place, Area first, LensGauge& gauge, const NeedsAsked& asked,
                  const Workers& workers);

} // namespace glim
