#include "model/nearest_word.h"

#include <catch2/catch.hpp>

using namespace glim;

using Words = std::vector<std::string>;

TEST_CASE("edit distance counts letters to insert, drop, exchange and swap", "[model]")
{
    CHECK(edit_distance("step", "step") == 0);
    CHECK(edit_distance("stpe", "step") == 1);
    CHECK(edit_distance("stp", "step") == 1);
    CHECK(edit_distance("stepp", "step") == 1);
    CHECK(edit_distance("stop", "step") == 1);
    CHECK(edit_distance("", "step") == 4);
    CHECK(edit_distance("kitten", "sitting") == 3);
}

TEST_CASE("the nearest word is suggested only if it is near", "[model]")
{
    const Words known = {"feature", "step", "touch"};
    CHECK(nearest_word("stpe", known) == "step");
    CHECK(nearest_word("fetaures", known) == "feature");
    CHECK_FALSE(nearest_word("colour", known));
    CHECK_FALSE(nearest_word("stpe", {}));
}

TEST_CASE("of words equally near the first one is suggested", "[model]")
{
    CHECK(nearest_word("lamb", {"lamp", "lame"}) == "lamp");
    CHECK(nearest_word("lamb", {"lame", "lamp"}) == "lame");
}

TEST_CASE("the remedy asks, or lists what is known, or says that there is nothing", "[model]")
{
    CHECK(did_you_mean("stpe", {"touch", "step"}) == "did you mean `step`?");
    CHECK(did_you_mean("colour", {"touch", "step"}) == "known are `touch` and `step`");
    CHECK(did_you_mean("colour", {}) == "there are none");
    Words many;
    for (int i = 0; i < 12; ++i)
        many.push_back("part number " + std::to_string(i));
    const std::string remedy = did_you_mean("colour", many);
    CHECK(remedy.ends_with(", and 4 more"));
    CHECK(std::count(remedy.begin(), remedy.end(), '`') == 16);
}
