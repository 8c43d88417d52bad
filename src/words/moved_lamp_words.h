#pragma once

#include "remedy/moved_lamp.h"
#include "words/text_block.h"

#include <string>

namespace glim {

/// The answer for people: the least move found, then what each way alone would take.
std::string moved_lamp_words(const MovedLampAnswer& answer, const Study& study,
                             const MoveLampTask& task, const TextStyle& style = {});

/// One sentence: "Moved by ... the lamp meets ..."
std::string moved_lamp_sentence(const MovedLampAnswer& answer, const Study& study);

/// "2.1 mm forward, 2.1 mm inboard"; "turned 3.2 deg to look more outboard"
std::string move_words(const LampMove& move);
/// One way of it.
std::string way_words(MoveWay way, double by);

} // namespace glim
