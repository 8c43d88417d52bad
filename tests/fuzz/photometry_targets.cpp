#include "fuzz/photometry_targets.h"

#include "input/read_ies.h"
#include "input/read_ldt.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace glim::test {

namespace {

void demand(bool holds, const char* what)
{
    if (!holds)
        throw std::logic_error(what);
}

bool ascends(const std::vector<Angle>& angles)
{
    return angles.size() >= 2 &&
           std::adjacent_find(angles.begin(), angles.end(), std::greater_equal<>()) == angles.end();
}

void expect_sound(const Photometry& photometry)
{
    const IntensityGrid& grid = photometry.grid;
    demand(ascends(grid.horizontal), "horizontal angles do not ascend");
    demand(ascends(grid.vertical), "vertical angles do not ascend");
    demand(grid.candela.size() == grid.horizontal.size() * grid.vertical.size(),
           "the grid lacks intensities");
    demand(std::all_of(grid.candela.begin(), grid.candela.end(),
                       [](Intensity i) { return i >= candelas(0) && std::isfinite(i.count()); }),
           "an intensity is negative or not finite");
    demand(grid.goniometer != Goniometer::c ||
               (grid.horizontal.front() == degrees(0) && grid.horizontal.back() == degrees(360)),
           "type c does not go round");
    demand(std::isfinite(in_lumens(flux_of(grid))), "the flux is not finite");
    const Peak peak = peak_of(grid);
    demand(intensity_at(grid, peak.at).has_value(), "the peak is outside the measured range");
    demand(!photometry.lamp_sets.empty(), "there is no set of lamps");
}

template <class Read>
void read_as(const Read& read)
{
    try {
        expect_sound(read().photometry);
    } catch (const InputError&) {
        return; // said what is wrong, as it should
    }
}

} // namespace

void read_as_ies(std::string_view bytes)
{
    // A file of factors is asked for by name; it gets the same bytes.
    const auto same = [&](const std::string&) { return std::optional(std::string(bytes)); };
    read_as([&] { return read_ies(bytes, "fuzz.ies", same); });
}

void read_as_ldt(std::string_view bytes)
{
    read_as([&] { return read_ldt(bytes, "fuzz.ldt"); });
}

} // namespace glim::test
