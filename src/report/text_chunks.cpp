#include "report/text_chunks.h"

#include "machine/utf8.h"

#include <algorithm>

namespace glim {

namespace {

std::size_t character_end(const std::string& words, std::size_t at)
{
    while (at < words.size() && continues_character(words[at]))
        ++at;
    return at;
}

Text beginning_of(Text text, std::size_t bytes)
{
    text.words.resize(bytes);
    return text;
}

/// How many bytes fit; at least one character, so that every chunk is a step ahead.
std::size_t fitting(const Text& text, double height)
{
    std::size_t fits = character_end(text.words, 1), too_much = text.words.size();
    while (fits + 1 < too_much) {
        const std::size_t middle = character_end(text.words, fits + (too_much - fits) / 2);
        if (middle >= too_much)
            break;
        (extent_of(beginning_of(text, middle)).height <= height ? fits : too_much) = middle;
    }
    const std::size_t blank = text.words.rfind(' ', fits);
    return blank == std::string::npos || blank == 0 ? fits : blank;
}

} // namespace

std::vector<Text> text_chunks(const Text& text, double height)
{
    std::vector<Text> chunks;
    Text rest = text;
    while (!rest.words.empty() && extent_of(rest).height > height) {
        const std::size_t bytes = fitting(rest, height);
        chunks.push_back(beginning_of(rest, bytes));
        rest.words.erase(0, std::max(bytes, rest.words.find_first_not_of(' ', bytes)));
    }
    chunks.push_back(rest);
    return chunks;
}

} // namespace glim
