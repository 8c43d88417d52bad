#include "words/health_words.h"

namespace glim {

std::vector<Labelled> health_entries(const MeshHealth& health)
{
    std::vector<Labelled> entries;
    entries.reserve(health_words.size());
    for (const HealthWord& word : health_words)
        entries.push_back(
            {std::string(word.label), std::to_string(health.*word.count) + std::string(word.says)});
    return entries;
}

} // namespace glim
