#pragma once

#include "model/intensity_grid.h"

#include <charconv>
#include <string>

namespace glim::test {

/// The shortest text that reads back as the same number.
inline std::string digits(double value)
{
    std::string text(32, ' ');
    const auto [end, error] = std::to_chars(text.data(), text.data() + text.size(), value);
    text.resize(static_cast<std::size_t>(end - text.data()));
    return text;
}

inline std::string one_a_line(const std::vector<double>& values)
{
    std::string text;
    for (const double value : values)
        text += digits(value) + "\n";
    return text;
}

inline std::vector<double> degrees_of(const std::vector<Angle>& angles)
{
    std::vector<double> values;
    for (const Angle a : angles)
        values.push_back(in_degrees(a));
    return values;
}

inline std::vector<double> candela_of(const IntensityGrid& grid)
{
    std::vector<double> values;
    for (const Intensity i : grid.candela)
        values.push_back(in_candelas(i));
    return values;
}

/// LM-63-2002, absolute: the grid as it is.
inline std::string ies_of(const IntensityGrid& grid)
{
    const std::string type = grid.goniometer == Goniometer::a   ? "3"
                             : grid.goniometer == Goniometer::b ? "2"
                                                                : "1";
    return "IESNA:LM-63-2002\n[TEST] made up\nTILT=NONE\n1 -1 1 " +
           std::to_string(grid.vertical.size()) + " " + std::to_string(grid.horizontal.size()) +
           " " + type + " 2 0.05 0.1 0\n1 1 21\n" + one_a_line(degrees_of(grid.vertical)) +
           one_a_line(degrees_of(grid.horizontal)) + one_a_line(candela_of(grid));
}

/// What a EULUMDAT file of the tests says beside its angles and intensities.
struct LdtFields {
    int symmetry = 0;
    std::string lamp_sets = "1\n1\nmade up\n1000\n2700\n80\n21\n";
    std::string conversion = "1";
    std::string output_ratio = "100";
    std::string tilt = "0";
};

/// EULUMDAT with `planes` listed and the intensities of `stored`, which may be fewer planes.
inline std::string ldt_of(const LdtFields& fields, const std::vector<double>& planes,
                          const IntensityGrid& stored)
{
    const std::string counts =
        std::to_string(planes.size()) + "\n0\n" + std::to_string(stored.vertical.size()) + "\n0\n";
    return "a company\n3\n" + std::to_string(fields.symmetry) + "\n" + counts +
           "report 7\na lamp\n12\nlamp.ldt\nlong ago\n100\n50\n20\n80\n40\n1\n2\n3\n4\n100\n" +
           fields.output_ratio + "\n" + fields.conversion + "\n" + fields.tilt + "\n" +
           fields.lamp_sets + one_a_line({0, 0, 0, 0, 0, 0, 0, 0, 0, 0}) + one_a_line(planes) +
           one_a_line(degrees_of(stored.vertical)) + one_a_line(candela_of(stored));
}

} // namespace glim::test
