#pragma once

#include "remedy/sight_lines.h"
#include "words/text_block.h"

namespace glim {

/// The answer, for a headline: whether the lens is large enough, and stands where it may.
std::string sight_lines_sentence(const SightLines& lines);
/// Where the rule may be met in one of several ways: that one is enough; may be empty.
std::string sight_choice_words(const SightLines& lines);

/// Which rows hang on what the sketch does not say, and where to say it; may be empty.
std::string left_open_words(const SightLines& lines);

/// What the sketch is: lens, place, vehicle.
std::vector<Labelled> sketch_entries(const LampSketch& sketch, const SightLines& lines);
/// What one row leaves open.
std::vector<Labelled> sight_row_entries(const SightRow& row);
/// Where a row of place lets the lens's centre be: "from 394 to 1463 mm above the ground; it is at
/// 650 mm".
std::string place_room_words(const PlaceRoom& room);
/// "at y = 500: up to 312 mm ahead" of each place across.
std::string nose_words(const NoseReach& reach);

/// All of it for a terminal, with the caution.
std::string sight_lines_words(const SightLines& lines, const LampSketch& sketch,
                              const TextStyle& style = {});

/// Says that the table's figures are only as good as their sources.
std::string sight_provenance_words(const SightLines& lines);

} // namespace glim
