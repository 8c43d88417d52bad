#include "report/html_text.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("what would be a tag or end an attribute is written as a reference", "[report]")
{
    CHECK(html_text("a<b> & \"c\"") == "a&lt;b&gt; &amp; &quot;c&quot;");
}

TEST_CASE("letters of every length stay as they are", "[report]")
{
    CHECK(html_text("mm\u00b2 \u2212 \U0001F697") == "mm\u00b2 \u2212 \U0001F697");
}

TEST_CASE("what HTML forbids becomes a mark in its place", "[report]")
{
    const std::string mark = "\uFFFD";
    CHECK(html_text(std::string_view("a\0b", 3)) == "a" + mark + "b");
    CHECK(html_text("\x1b[0m") == mark + "[0m");
    CHECK(html_text("\xC2\x85") == mark);     // a control character of two bytes
    CHECK(html_text("\xEF\xBF\xBE") == mark); // U+FFFE is no character
}

TEST_CASE("bytes that are no UTF-8 become a mark each, and what follows is read", "[report]")
{
    const std::string mark = "\uFFFD";
    CHECK(html_text("\xff nose") == mark + " nose");
    CHECK(html_text("\xC3") == mark);                       // cut short
    CHECK(html_text("\xC0\xAFx") == mark + mark + "x");     // overlong
    CHECK(html_text("\xED\xA0\x80") == mark + mark + mark); // a surrogate
    CHECK(html_text("\xE2\x82(") == mark + mark + "(");     // broken off
}

// RFC 4648, section 10.
TEST_CASE("data stands in a page as base64", "[report]")
{
    CHECK(data_uri("a/b", "") == "data:a/b;base64,");
    CHECK(data_uri("a/b", "f") == "data:a/b;base64,Zg==");
    CHECK(data_uri("a/b", "fo") == "data:a/b;base64,Zm8=");
    CHECK(data_uri("a/b", "foobar") == "data:a/b;base64,Zm9vYmFy");
}
