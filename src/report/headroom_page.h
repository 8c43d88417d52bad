#pragma once

#include "drawing/figure.h"
#include "machine/new_folder.h"
#include "remedy/headroom.h"
#include "report/document.h"

namespace glim {

/// The headroom of a study's surfaces, and its picture where there are any.
struct HeadroomShown {
    std::vector<Headroom> surfaces;
    std::optional<Figure> picture;
};

/// The chapter of a page: sentence, picture, table. Empty where no surface counts.
std::vector<Block> headroom_chapter(const HeadroomShown& headroom, const KeepClear& found,
                                    const Study& study);

/// All surfaces as one PLY, each point with its headroom and painted by it; the picture; the tables
/// as CSV. Nothing where no surface counts.
void put_headroom(const HeadroomShown& headroom, const KeepClear& found, const Study& study,
                  NewFolder& folder);

} // namespace glim
