#include "machine/utf8.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a character of UTF-8 is told with its length", "[machine]")
{
    const auto check = [](std::string_view text, char32_t code, std::size_t bytes) {
        const Utf8Character c = first_character(text);
        CHECK(c.code == code);
        CHECK(c.bytes == bytes);
    };
    check("a", U'a', 1);
    check("\xC2\xB2x", 0xB2, 2);
    check("\xE2\x82\xAC", 0x20AC, 3);
    check("\xF0\x9F\x92\xA1", 0x1F4A1, 4);
}

TEST_CASE("what is cut off, overlong or no character is no UTF-8", "[machine]")
{
    for (const std::string_view text :
         {"\xE2\x82", "\xC2", "\xC0\x80", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80",
          "\xB2", "\xFFx", "\xC2x"}) {
        CHECK(first_character(text).bytes == 0);
        CHECK(!is_utf8(text));
    }
    CHECK(is_utf8(""));
    CHECK(is_utf8("10 \xC2\xB0, plain"));
    CHECK(!is_utf8("M\xFCller"));
}
