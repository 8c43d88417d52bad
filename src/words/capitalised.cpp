#include "words/capitalised.h"

namespace glim {

std::string capitalised(std::string words)
{
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}

} // namespace glim
