#include "input/obj_statements.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;

TEST_CASE("every word of OBJ is known once, and as it is written", "[input]")
{
    std::vector<std::string> words = obj_words();
    for (const std::string& word : words)
        CHECK(obj_statement(word) != ObjStatement::unknown);
    std::sort(words.begin(), words.end());
    CHECK(std::adjacent_find(words.begin(), words.end()) == words.end());
    CHECK(obj_statement("V") == ObjStatement::unknown);
    CHECK(obj_statement("") == ObjStatement::unknown);
    CHECK(obj_statement("vx") == ObjStatement::unknown);
}

TEST_CASE("what would bring in another file or a curved surface is not passed over", "[input]")
{
    CHECK(obj_statement("call") == ObjStatement::other_file);
    CHECK(obj_statement("surf") == ObjStatement::curved_surface);
    CHECK(obj_statement("mtllib") == ObjStatement::passed_over);
    CHECK(obj_statement("fo") == ObjStatement::face);
}
