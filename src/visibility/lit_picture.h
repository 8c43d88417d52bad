#pragma once

#include "visibility/picture_frame.h"
#include "visibility/prepared_scene.h"

#include <vector>

namespace glim {

/// What an eye knows of a lit face at one sample of a picture.
enum class LitKind : std::uint8_t {
    none, ///< no lit facet there that faces the eye
    seen,
    hidden_by_others,   ///< and what was approved with the lamp would leave it
    hidden_by_approved, ///< by the lamp itself or by what was approved with it, others or no others
};

/// The samples of a picture with one lamp's lit face. Kinds divide its area as SeenArea does:
/// `seen` makes `visible`, with `hidden_by_others` it makes `approved`. All kinds together make
/// `lens` up to what of the lit face lies, seen from there, behind another part of it that faces
/// the eye too.
struct LitPicture {
    PictureFrame frame;
    std::vector<LitKind> samples; ///< by rows from the top

    Area area_of(LitKind kind) const; ///< by counting
};

/// By the same rays as areas are found by (visibility/touch.h), started where the picture's samples
/// meet the lit face. `view` as the scene gives it for this lamp. The same for any number of
/// threads. Throws Stopped.
LitPicture lit_picture(const PreparedScene& scene, const LampStanding& lamp, const LampView& view,
                       const PictureFrame& frame, const Workers& workers);

} // namespace glim
