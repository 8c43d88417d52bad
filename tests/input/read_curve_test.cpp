#include "input/read_curve.h"

#include "input/bad_files.h"

using namespace glim;
using namespace glim::test;

namespace {

std::string said(const std::string& text)
{
    return complaints_of([&] { read_curve(text, "curve.obj"); });
}

} // namespace

TEST_CASE("a curve has its points in the order of its lines", "[input]")
{
    const std::string points = "# a curve\nv 0 0 0\nv 1 0 0\nv 1 1 0\nv 0 1.5 0\n";
    const std::vector<Point> square = {{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1.5, 0}};
    CHECK(read_curve(points + "l 1 2 3 4 1\n", "") == square);
    CHECK(read_curve(points + "l 1 2 3 4\n", "") == square);
    CHECK(read_curve(points + "l 1/1 2/2\nl 2 3\nl 3 4 1\n", "") == square);
    CHECK(read_curve(points + "l -4 -3 -2 -1\n", "") == square);
}

TEST_CASE("a curve that is none is complained of", "[input]")
{
    CHECK(said("v 0 0 0\nv 1 0 0\nl 1 2 1\n") ==
          "curve.obj:1:1: the lines of this file enclose nothing\n"
          "    write points as `v x y z` and the curve as `l 1 2 3 ...`, three at least\n");
    CHECK(said("v 0 0 0\nv 1 0\nv 1 x 0\nl 1 2 4\nl 1 3\n") ==
          "curve.obj:2:1: a point needs 3 numbers, and this has 2\n    write x, y and z\n"
          "curve.obj:3:5: `x` is not a number\n    write digits such as 12.5 or -1.25e1\n"
          "curve.obj:4:7: there is no point `4` before this line\n"
          "    write every point before the lines that use it; they count from 1\n"
          "curve.obj:5:3: this line does not begin where the one before it ended\n"
          "    write the curve as one line after the other, closed, and nothing else\n");
}
