#include "input/ldt_planes.h"

#include "input/photometric_angles.h"
#include "input/text_scanner.h"

namespace glim {

namespace {

/// One symmetry code: which share of the planes is stored, and from where to where.
struct SymmetryCode {
    FiledSymmetry symmetry;
    std::size_t divisor;  ///< of the count of planes
    std::size_t quarters; ///< stored, and the plane that closes them; 4 stands for the whole turn
    std::size_t from;     ///< quarters of a turn where the stored ones begin
};
// That code 3 stores its planes from C 270 by C 0 to C 90: from memory, not verified.
constexpr std::array symmetry_codes = {
    SymmetryCode{FiledSymmetry::none, 1, 4, 0},
    SymmetryCode{FiledSymmetry::about_pole, 1, 0, 0},
    SymmetryCode{FiledSymmetry::plane_c0_c180, 2, 2, 0},
    SymmetryCode{FiledSymmetry::plane_c90_c270, 4, 2, 3},
    SymmetryCode{FiledSymmetry::both_planes, 4, 1, 0},
};

const SymmetryCode& code_of(FiledSymmetry symmetry)
{
    std::size_t i = 0;
    while (symmetry_codes[i].symmetry != symmetry)
        ++i;
    return symmetry_codes[i];
}

void expect_plane(PhotometricText& file, const WrittenNumber& angle, int wanted)
{
    if (angle.value != wanted)
        file.complain("planes of symmetry out of their place", angle.word,
                      "this C plane is at " + shown(angle.word) +
                          " degrees, and its symmetry code needs one at " + std::to_string(wanted),
                      "correct the symmetry code or the planes");
}

} // namespace

LdtPlanes ldt_planes(PhotometricText& file, int code, std::size_t planes,
                     std::string_view count_word)
{
    const SymmetryCode& row = symmetry_codes[static_cast<std::size_t>(code)];
    if (planes % row.divisor != 0)
        file.refuse(count_word,
                    "the symmetry code " + std::to_string(code) +
                        " needs a count of C planes that can be divided by " +
                        std::to_string(row.divisor) + ", and this is " + shown(count_word),
                    "correct the symmetry code or the count");
    if (code == 0 && planes < 2)
        file.refuse(count_word,
                    "there is one C plane, and the symmetry code 0 says that they differ",
                    "write the symmetry code 1, or export the file with all its planes");
    if (row.quarters == 4)
        return {row.symmetry, 0, planes};
    return {row.symmetry, planes * row.from / 4, planes * row.quarters / 4 + 1};
}

void expect_ldt_planes(PhotometricText& file, const std::vector<WrittenNumber>& angles,
                       const LdtPlanes& planes)
{
    expect_plane(file, angles.front(), 0);
    expect_ascending(file, angles, "C plane");
    for (const WrittenNumber& angle : angles)
        if (angle.value < 0 || angle.value >= 360)
            file.complain("angles out of range", angle.word,
                          "the C plane " + shown(angle.word) +
                              " is not from 0 to below 360 degrees",
                          "correct it; C 360 is C 0");
    const SymmetryCode& row = code_of(planes.symmetry);
    if (row.quarters == 0 || row.quarters == 4)
        return;
    const std::size_t last = (planes.first + planes.count - 1) % angles.size();
    expect_plane(file, angles[planes.first], static_cast<int>(90 * row.from));
    expect_plane(file, angles[last], static_cast<int>(90 * ((row.from + row.quarters) % 4)));
}

std::vector<Angle> stored_angles(const std::vector<WrittenNumber>& angles, const LdtPlanes& planes)
{
    std::vector<Angle> stored;
    stored.reserve(planes.count);
    for (std::size_t i = 0; i < planes.count; ++i)
        stored.push_back(degrees(angles[(planes.first + i) % angles.size()].value));
    return stored;
}

} // namespace glim
