#pragma once

#include "words/text_block.h"

namespace glim {

/// What a written answer is of, and what to type to get it again.
struct Origin {
    std::string file;  ///< study or sketch, as results name it
    std::string title; ///< may be empty
    std::string command;
};

/// "study", "title" where there is one, and "command", label by label.
std::vector<Labelled> origin_entries(const Origin& origin);

} // namespace glim
