#pragma once

#include <string_view>

namespace glim::test {

// What the fuzzers feed, and what the kept inputs are replayed through. Each reads its input as a
// file; complaints are an answer like any other. Whatever is read must hold what the model
// promises: std::logic_error says what does not.

void read_as_ies(std::string_view bytes);
void read_as_ldt(std::string_view bytes);

} // namespace glim::test
