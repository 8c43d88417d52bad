#include "words/origin_words.h"

namespace glim {

std::vector<Labelled> origin_entries(const Origin& origin)
{
    std::vector<Labelled> entries{{"study", origin.file}};
    if (!origin.title.empty())
        entries.push_back({"title", origin.title});
    entries.push_back({"command", origin.command});
    return entries;
}

} // namespace glim
