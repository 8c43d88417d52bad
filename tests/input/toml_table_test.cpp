#include "input/toml_table.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("every key and value knows its line and column", "[input]")
{
    const TomlTable top = parse_toml("a = 1\n[[lamp]]\n  side = \"left\"\n", "s.toml");
    REQUIRE(top.find("lamp"));
    const auto& lamps = std::get<std::vector<TomlValue>>(top.find("lamp")->value.is);
    const auto& lamp = std::get<TomlTable>(lamps.at(0).is);
    const TomlEntry& side = *lamp.find("side");
    CHECK(side.place.words() == "s.toml:3:3");
    CHECK(side.value.place.words() == "s.toml:3:10");
    CHECK(lamp.place.words() == "s.toml:2:1");
    CHECK(top.find("b") == nullptr);
}

TEST_CASE("entries come in the order of the text", "[input]")
{
    const TomlTable top = parse_toml("z = 1\nm = 2.5\na = true\n", "s.toml");
    REQUIRE(top.entries.size() == 3);
    CHECK(top.entries[0].key == "z");
    CHECK(std::get<double>(top.entries[1].value.is) == 2.5);
    CHECK(std::get<bool>(top.entries[2].value.is));
}

TEST_CASE("a mark of byte order and line ends of other systems do no harm", "[input]")
{
    const TomlTable top = parse_toml("\xef\xbb\xbfx = 1\r\ny = 2\r\n", "s.toml");
    CHECK(top.find("x")->place.line == 1);
    CHECK(top.find("y")->place.line == 2);
}

TEST_CASE("dates are told apart from numbers and texts", "[input]")
{
    const TomlTable top = parse_toml("d = 2020-01-02\n", "s.toml");
    CHECK(std::holds_alternative<TomlDate>(top.find("d")->value.is));
}

TEST_CASE("tables nested without end are refused and not followed", "[input]")
{
    CHECK_THROWS_AS(parse_toml("a = " + std::string(100000, '['), "s.toml"), InputError);
}
