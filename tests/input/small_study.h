#pragma once

#include "input/read_study.h"
#include "machine/temporary_folder.h"

#include <stdexcept>
#include <string>

namespace glim::test {

/// The left half of a small front, forward -x, up +z, millimetres. The lens stands at y = -700 to
/// -600 and looks forward; the shell before it is closed; the nose ends on the median plane, and
/// the plate reaches over it.
inline const std::string corner_obj = R"(o lens
g lamp_left
usemtl amber
v -500 -700 650
v -500 -600 650
v -500 -600 700
v -500 -700 700
f 1 4 3 2
o shell
g lamp_left
usemtl clear
v -520 -700 650
v -520 -600 650
v -520 -600 700
v -520 -700 700
v -518 -700 650
v -518 -600 650
v -518 -600 700
v -518 -700 700
f 5 8 7 6
f 9 10 11 12
f 5 6 10 9
f 6 7 11 10
f 7 8 12 11
f 8 5 9 12
o nose
g body
usemtl paint
v -800 -300 300
v -800 0 300
v -800 0 800
v -800 -300 800
f 13 16 15 14
o plate
g body
usemtl white
v -805 -250 400
v -805 250 400
v -805 250 500
v -805 -250 500
f 17 20 19 18
)";

inline const std::string small_study = R"(format = 1

[vehicle]
forward = "-x"
up = "+z"
modelled_side = "left"

[ground.curb]
height = 0

[[mesh]]
name = "corner"
file = "corner.obj"
unit = "mm"
up = "+z"
forward = "-x"

[[surface]]
name = "lens"
mesh = "corner"
select = { object = "lens" }
role = "emitting"
mirror = "yes"

[[lamp]]
name = "indicator"
function = "front_indicator"
side = "left"
emits = ["lens"]

[[check]]
name = "across"
table = "own-example"
rule = "across-45"
lamp = "indicator"
)";

/// Type A, 10 cd on the axis, more to the right of one who looks out along it.
inline const std::string lamp_ies = "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 3 3 3 2 0.1 0.05 0\n"
                                    "1 1 21\n-90 0 90\n-90 0 90\n0 4 0\n0 10 0\n0 8 0\n";

/// `text` with the first `from` replaced; there must be one, or the test would test nothing.
inline std::string with(std::string text, const std::string& from, const std::string& to)
{
    const std::size_t at = text.find(from);
    if (at == std::string::npos)
        throw std::runtime_error("the text holds no \"" + from + "\"");
    return text.replace(at, from.size(), to);
}

/// Reads a study beside the mesh of the small front.
inline Study study_of(const std::string& text, const std::string& obj = corner_obj)
{
    const TemporaryFolder folder;
    write(folder / "corner.obj", obj);
    write(folder / "study.toml", text);
    return read_study(folder / "study.toml");
}

} // namespace glim::test
