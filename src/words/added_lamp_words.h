#pragma once

#include "remedy/added_lamp.h"
#include "words/text_block.h"

#include <string>

namespace glim {

/// The answer for people: whether a lamp does it, the places with their figures, what fills the gap
/// only, what the tables and rows of light say, how candidates fared.
std::string added_lamp_words(const AddedLampAnswer& answer, const Study& study,
                             const AddLampTask& task, const TextStyle& style = {});

/// One sentence: "one more lamp does it: ..."
std::string added_lamp_sentence(const AddedLampAnswer& answer, const Study& study);

/// "x -786.6, y -45, z 694.2 mm"
std::string place_words(const Point& p);

} // namespace glim
