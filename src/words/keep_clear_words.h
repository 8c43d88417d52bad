#pragma once

#include "remedy/headroom.h"
#include "words/text_block.h"

namespace glim {

/// In one sentence: whether anything reaches into the spaces, what deepest.
std::string keep_clear_sentence(const KeepClear& found, const Study& study);

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
