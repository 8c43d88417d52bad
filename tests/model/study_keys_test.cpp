#include "model/study_keys.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <sstream>

using namespace glim;

namespace {

std::string manual()
{
    std::ifstream file(GLIM_SOURCE_DIR "/docs/study-file.md", std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

} // namespace

TEST_CASE("the manual has the row of every key, word for word", "[model]")
{
    const std::string text = manual();
    REQUIRE_FALSE(text.empty());
    for (const StudyKey& key : study_keys()) {
        std::ostringstream row;
        row << "| `" << key.key << "` | " << key.unit << (key.unit.empty() ? "| " : " | ")
            << key.fallback << " | " << key.sentence << " |";
        INFO(study_section_words(key.section) << ": " << row.str());
        CHECK(text.find(row.str()) != std::string::npos);
    }
}

TEST_CASE("no section has a key twice", "[model]")
{
    for (const StudyKey& key : study_keys()) {
        const std::vector<std::string> same = study_keys_of(key.section);
        INFO(key.section << " " << key.key);
        CHECK(std::count(same.begin(), same.end(), key.key) == 1);
    }
}

TEST_CASE("sections are written as studies write them", "[model]")
{
    CHECK(study_section_words("") == "the top of the study");
    CHECK(study_section_words("vehicle") == "[vehicle]");
    CHECK(study_section_words("lamp") == "[[lamp]]");
    CHECK(study_section_words("surface.select.box") == "`box` of `select` of [[surface]]");
    CHECK(study_sections_with("step") == std::vector<std::string>{"[sampling]", "[tolerances]"});
    CHECK(study_sections_with("stpe").empty());
}
