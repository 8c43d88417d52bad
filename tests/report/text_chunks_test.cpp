#include "report/text_chunks.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

std::string words_of(const std::vector<Text>& chunks, const std::string& between)
{
    std::string all;
    for (const Text& chunk : chunks)
        all += (all.empty() ? "" : between) + chunk.words;
    return all;
}

} // namespace

TEST_CASE("a text that fits stays whole", "[report]")
{
    const std::vector<Text> chunks = text_chunks({.words = "a few words", .width = 200}, 50);
    REQUIRE(chunks.size() == 1);
    CHECK(chunks[0].words == "a few words");
}

TEST_CASE("a long text breaks at blanks, every part fits, and no word is lost", "[report]")
{
    std::string words = "1";
    for (int i = 2; i <= 400; ++i)
        words += " " + std::to_string(i);
    const std::vector<Text> chunks = text_chunks({.words = words, .width = 100}, 60);
    CHECK(chunks.size() > 3);
    for (const Text& chunk : chunks)
        CHECK(extent_of(chunk).height <= 60);
    CHECK(words_of(chunks, " ") == words);
}

TEST_CASE("a word without end breaks between letters", "[report]")
{
    std::string word;
    for (int i = 0; i < 600; ++i)
        word += "\u00e4";
    const std::vector<Text> chunks = text_chunks({.words = word, .width = 60}, 40);
    CHECK(chunks.size() > 3);
    for (const Text& chunk : chunks) {
        CHECK(extent_of(chunk).height <= 40);
        CHECK(chunk.words.size() % 2 == 0); // two bytes a letter
    }
    CHECK(words_of(chunks, "") == word);
}
