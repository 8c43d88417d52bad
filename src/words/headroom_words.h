#pragma once

#include "remedy/headroom.h"
#include "words/text_block.h"

#include <string>

namespace glim {

/// In a sentence, the tightest first: "Headroom along the normal: `lamp bezel` is 2.69 mm inside;
/// `bonnet edge` has 1.4 mm, `bezel lip` 0.3 mm; 2 more surfaces have 100 mm or more." Of a surface
/// and its mirror image the tighter one. Empty where no surface counts.
std::string headroom_sentence(const std::vector<Headroom>& headroom, const Study& study);

/// The sentence and a table of all surfaces, for a terminal.
std::string headroom_words(const std::vector<Headroom>& headroom, const KeepClear& found,
                           const Study& study, const TextStyle& style = {});

/// A line of a table: a surface, or a surface and its mirror image where both have the same; areas
/// are then those of each.
struct HeadroomRow {
    const Headroom* headroom;
    bool both_sides = false;
};
std::vector<HeadroomRow> headroom_rows(const std::vector<Headroom>& headroom);

/// The table alone: the first line its titles.
std::vector<std::vector<std::string>> headroom_cells(const std::vector<Headroom>& headroom,
                                                     const KeepClear& found, const Study& study);

} // namespace glim
