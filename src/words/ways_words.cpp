#include "words/ways_words.h"

#include "words/name_list.h"

namespace glim {

std::string ways_words(const WaysOfRule& ways)
{
    std::string words;
    for (const std::vector<std::string>& rows : ways) {
        std::vector<std::string> names;
        names.reserve(rows.size());
        for (const std::string& row : rows)
            names.push_back(quoted(row));
        words += (words.empty() ? "" : ", or ") + name_list(names);
    }
    return words;
}

} // namespace glim
