#include "words/keys.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("results spell choices as studies and tables do", "[words]")
{
    CHECK(key_of(Provenance::second_hand) == "second-hand");
    CHECK(key_of(AnsweredBy::together) == "union");
    CHECK(key_of(ApprovedParts::ignored) == "ignored");
    CHECK(key_of(Measured::axis_height) == "axis_height");
    CHECK(key_of(Combine::any_of) == "any_of");
    CHECK(key_of(ReferenceAxis::rearward) == "rearward");
    CHECK(key_of(Side::median) == "median");
    CHECK(key_of(LampFunction::high_stop) == "high_stop");
    CHECK(words_of(LampFunction::high_stop) == "high stop lamp");
}
