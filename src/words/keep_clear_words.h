#pragma once

#include "remedy/headroom.h"
#include "words/text_block.h"

namespace glim {

/// The answer, for a headline: of which lamp too little is in view whatever the body does, what
/// reaches in deepest, or that the spaces are clear.
std::string keep_clear_sentence(const KeepClear& found, const Study& study);

/// What has to be read beside it: that what reaches into the space of a row of area is not yet a
/// failure, and where one space of several is enough. Each a paragraph; may be none.
std::vector<std::string> keep_clear_notes(const KeepClear& found);

/// "2.58 mm"; of more than is told apart "500 mm or more".
std::string intrusion_depth_words(Length depth);

/// What results call a space: "check, row, lamp".
std::string space_label(const KeepClearSpace& space);

/// What a space is for, how large it is and what its figures rest on, label by label.
std::vector<Labelled> space_entries(const KeepClearSpace& space);

/// A surface that reaches in: how deep, where, in how much of the field.
std::string intrusion_words(const Intrusion& intrusion, const Study& study);

/// All of it for a terminal, with the caution.
std::string keep_clear_words(const KeepClear& found, const std::vector<Headroom>& headroom,
                             const Study& study, const TextStyle& style = {});

} // namespace glim
