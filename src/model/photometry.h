#pragma once

#include "model/filed_symmetry.h"
#include "model/flux.h"

#include <optional>
#include <string>
#include <vector>

namespace glim {

/// One line of a photometric file that people wrote for people, in UTF-8.
struct PhotometryNote {
    std::string label; ///< keyword or field: "TEST"
    std::string text;
    friend bool operator==(const PhotometryNote&, const PhotometryNote&) = default;
};

/// What the flux that a file states is the flux of.
enum class StatedFlux {
    bare_lamps, ///< the light sources alone: the lamp that holds them gives less
    luminaire,  ///< what leaves the lamp
};

/// The lit opening as the file gives it. LM-63 writes round ones with negative sizes.
struct LitOpening {
    Length width;
    Length length;
    Length height;
    friend bool operator==(const LitOpening&, const LitOpening&) = default;
};

/// A set of light sources that the file can be used with.
struct LampSet {
    int count = 1;           ///< of light sources; negative where the format marks absolute values
    std::string kind;        ///< as written; may be empty
    LuminousFlux total_flux; ///< of all in the set
    double watts = 0;
    friend bool operator==(const LampSet&, const LampSet&) = default;
};

/// A photometric file, understood. All intensities are in candela and final: every multiplier and
/// factor that the file's edition applies is in them.
struct Photometry {
    std::string format; ///< "LM-63-2002", "EULUMDAT"
    IntensityGrid grid; ///< mirrored and closed, see filed_symmetry.h
    FiledSymmetry symmetry = FiledSymmetry::none;
    std::size_t filed_horizontals = 0; ///< planes that the file itself holds
    bool absolute = false; ///< measured on the lamp as it is, not for a nominal source flux
    std::optional<LuminousFlux> stated_flux; ///< of the set that is used
    StatedFlux stated_flux_is_of = StatedFlux::bare_lamps;
    double candela_factor = 1;      ///< by what each number of the file became candela
    std::vector<LampSet> lamp_sets; ///< the first is the one used
    LitOpening opening;
    Angle tilt_when_measured;          ///< EULUMDAT's field; intensities are not turned by it
    std::vector<PhotometryNote> notes; ///< in the file's order
};

} // namespace glim
