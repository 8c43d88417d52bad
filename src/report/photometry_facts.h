#pragma once

#include "model/mounting.h"
#include "model/photometry.h"
#include "report/json.h"
#include "words/text_block.h"

#include <string>

namespace glim {

/// What `inspect` tells of a photometric file beside what stands in it.
struct PhotometryFacts {
    std::string file; ///< as the user wrote it
    Photometry photometry;
    MeasuredRange range;
    Peak peak;
    LuminousFlux flux; ///< within the measured range
    /// Integrated minus stated, of the stated one; nothing where the file states none.
    std::optional<double> flux_difference;
    std::optional<MountingTrouble> mounting; ///< what a study has to say of it
};

PhotometryFacts photometry_facts(Photometry photometry, std::string file);

/// Its header, type, ranges, peak, flux and symmetry, and bars of its profiles.
std::string photometry_words(const PhotometryFacts& facts, const TextStyle& style = {});

Json photometry_json(const PhotometryFacts& facts);

} // namespace glim
