#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace glim {

/// Letters (bytes) to insert, drop, exchange or swap with their neighbour to make `a` into `b`.
std::size_t edit_distance(std::string_view a, std::string_view b);

/// `known` with the one most like `written` first; equally near ones keep their order.
std::vector<std::string> nearest_first(std::string_view written, std::vector<std::string> known);

/// The known word that was most likely meant: at most a third of the letters differ.
std::optional<std::string> nearest_word(std::string_view written,
                                        const std::vector<std::string>& known);

/// The remedy for an unknown word: "did you mean `step`?", else "known are `a`, `b` and `c`", the
/// nearest first and eight at most; "there are none" if nothing is known.
std::string did_you_mean(std::string_view written, const std::vector<std::string>& known);

/// "`a`, `b` and `c`"; with `joint` "or" for a choice.
std::string listed(const std::vector<std::string>& words, std::string_view joint = "and");

} // namespace glim
