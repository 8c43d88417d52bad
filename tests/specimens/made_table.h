#pragma once

#include "model/rule.h"

namespace glim::test {

/// A table of one row that uses most of what rows can say.
inline RuleTable made_table()
{
    RuleRow row;
    row.id = "inboard";
    row.title = "A made row";
    row.citation = {Provenance::second_hand, "a quotation", "clause 4"};
    row.functions = {LampFunction::front_indicator};
    row.field = {{{degrees(-45), degrees(45), degrees(-15), degrees(15)}}};
    row.criterion = LeastArea{square_millimetres(1250)};
    row.when = {{Measured::overall_width, {}, millimetres(2032)}};
    row.relaxations = {{.when = {{Measured::axis_height, {}, millimetres(750)}},
                        .field = {{{degrees(-45), degrees(45), degrees(-5), degrees(15)}}},
                        .citation = {Provenance::read, "the text", ""}}};
    return {.name = "made",
            .regulation = "no regulation",
            .edition = "1st",
            .title = "A made table",
            .rows = {row},
            .rules = {{"all", "Everything", Combine::all_of, {"inboard"}}}};
}

} // namespace glim::test
