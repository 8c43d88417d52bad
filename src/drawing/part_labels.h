#pragma once

#include "drawing/canvas.h"
#include "visibility/body_picture.h"

namespace glim {

/// A part's name in a picture, set where the part has room for it.
struct PartLabel {
    std::uint32_t part; ///< place in the bodies
    std::string words;
    Point2 centre; ///< pixels
};

/// A name for each part, as far as there is room: in the middle of where the part is widest, on
/// that part only, and where `free` (one a sample) is true. `names` has one a part, and those
/// without a name get no label. `size` is the text's, `pixels` are a point's.
std::vector<PartLabel> place_labels(const BodyPicture& picture, const std::vector<bool>& free,
                                    const std::vector<std::string>& names, double size,
                                    double pixels);

} // namespace glim
