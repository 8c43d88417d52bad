#include "input/luminance_map.h"

#include "input/bad_files.h"

#include <cstdint>

using namespace glim;
using namespace glim::test;

namespace {

/// Bytes written as hexadecimal digits.
std::string bytes_of(std::string_view digits)
{
    const auto value = [](char c) { return c <= '9' ? c - '0' : c - 'a' + 10; };
    std::string bytes;
    for (std::size_t i = 0; i + 1 < digits.size(); i += 2)
        bytes.push_back(static_cast<char>(value(digits[i]) * 16 + value(digits[i + 1])));
    return bytes;
}

// Written with zlib and struct of Python 3.11, not with libpng: 2 x 1 pixels, 8 bits grey: 51, 255.
const std::string grey8 = bytes_of(
    "89504e470d0a1a0a0000000d4948445200000002000000010800000000d14920560000000b49444154789c63"
    "30fe0f00016801338ed855740000000049454e44ae426082");
// The same of 16 bits: 0x3333, 0xffff; and 1 x 1 pixel in colours.
const std::string grey16 = bytes_of(
    "89504e470d0a1a0a0000000d494844520000000200000001100000000081d9fc150000000d49444154789c63"
    "3036feff1f00046702657078a4760000000049454e44ae426082");
const std::string colours = bytes_of(
    "89504e470d0a1a0a0000000d4948445200000001000000010802000000907753de0000000c49444154789c63"
    "30fecf0000029b013382262be00000000049454e44ae426082");

std::string said_of(std::string_view bytes)
{
    return complaints_of([&] { read_luminance_map(bytes, "map"); });
}

} // namespace

TEST_CASE("grey PNG files of 8 and 16 bits are read as they stand", "[input]")
{
    for (const std::string& bytes : {grey8, grey16}) {
        const GreyMap map = read_luminance_map(bytes, "map.png");
        CHECK(map.columns == 2);
        CHECK(map.rows == 1);
        REQUIRE(map.grey.size() == 2);
        CHECK(map.grey[0] == Approx(0.2).margin(1e-7));
        CHECK(map.grey[1] == 1);
    }
}

TEST_CASE("a picture in colours, a damaged and an unfinished one are complaints", "[input]")
{
    CHECK(said_of(colours) == "map: this picture has colours\n    save it as grey values\n");
    std::string damaged = grey8;
    damaged[20] = 'x';
    CHECK(said_of(damaged).find("map: this PNG file is damaged or too large: ") == 0);
    for (std::size_t length = 8; length + 12 < grey8.size(); ++length)
        CHECK(said_of(grey8.substr(0, length)).find("map: this PNG file is damaged") == 0);
}

TEST_CASE("a table of numbers is read row by row from the top", "[input]")
{
    const GreyMap map = read_luminance_map("# cd/m2\n100, 50 ;25\r\n0\t0 1e2\n", "map.csv");
    CHECK(map.columns == 3);
    CHECK(map.rows == 2);
    CHECK(map.grey == std::vector<float>{100, 50, 25, 0, 0, 100});
}

TEST_CASE("a table that is no picture says where", "[input]")
{
    CHECK(said_of("1 2\n3 x\n") == "map:2:3: `x` is no brightness\n"
                                   "    write a number of 0 or more, with a decimal point\n");
    CHECK(said_of("1 -2\n").find("map:1:3: `-2` is no brightness") == 0);
    CHECK(said_of("1 2\n3\n") == "map:2:1: this row has 1 numbers and the first 2\n"
                                 "    give every row as many numbers\n");
    CHECK(said_of("").find("map: this picture is dark all over") == 0);
    CHECK(said_of(std::string("\0\1\2", 3)).find("map: this is neither a PNG file") == 0);
}
