#include "input/read_ldt.h"

#include "input/filed_poles.h"
#include "input/ldt_lines.h"
#include "input/ldt_planes.h"
#include "input/photometric_angles.h"
#include "input/photometric_text.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr int most_planes = 3600;
constexpr int most_gammas = 3601;
constexpr int most_lamp_sets = 100;
constexpr std::size_t direct_ratios = 10;
/// Listed angles are rounded to two decimals by some programs.
constexpr double step_grain_deg = 0.011;

class LdtReader {
public:
    LdtReader(std::string_view text, const std::string& name) : file_(text, name), lines_(file_) {}

    PhotometryFile read()
    {
        read_head();
        read_names();
        read_sizes();
        read_losses();
        read_lamp_sets();
        lines_.numbers(direct_ratios, "a direct ratio");
        read_angles();
        IntensityGrid filed{Goniometer::c, stored_angles(planes_, stored_), angles_in(gammas_), {}};
        filed.candela = read_candela();
        lines_.expect_end();
        file_.throw_if_any();
        warn_of_poles(file_, filed, {planes_, gammas_});
        result_.format = "EULUMDAT";
        result_.grid = expanded(filed, stored_.symmetry);
        result_.symmetry = stored_.symmetry;
        result_.filed_horizontals = stored_.count;
        return {std::move(result_), file_.take_warnings()};
    }

private:
    void note(const char* label, std::string_view text)
    {
        if (!text.empty())
            result_.notes.push_back({label, note_text(text)});
    }

    void read_head()
    {
        note("company", lines_.text("the company"));
        lines_.needed("the type of the lamp", 0, 3);
        const int code = lines_.needed("the symmetry code", 0, 4).value;
        const LdtLines::Needed count = lines_.needed("the number of C planes", 1, most_planes);
        plane_count_ = static_cast<std::size_t>(count.value);
        plane_step_ = lines_.at_least_zero("the step of the C planes");
        stored_ = ldt_planes(file_, code, plane_count_, count.word);
        gamma_count_ = static_cast<std::size_t>(
            lines_.needed("the number of gamma angles", 2, most_gammas).value);
        gamma_step_ = lines_.at_least_zero("the step of gamma");
    }

    void read_names()
    {
        note("report", lines_.text("the number of the report"));
        note("name", lines_.text("the name of the lamp"));
        note("number", lines_.text("the number of the lamp"));
        note("file", lines_.text("the name of the file"));
        note("date", lines_.text("date and user"));
    }

    void read_sizes()
    {
        lines_.at_least_zero("the length of the lamp");
        lines_.at_least_zero("the width of the lamp");
        lines_.at_least_zero("the height of the lamp");
        const WrittenNumber length = lines_.at_least_zero("the length of the luminous area");
        const WrittenNumber width = lines_.at_least_zero("the width of the luminous area");
        const std::vector<WrittenNumber> heights =
            lines_.numbers(4, "a height of the luminous area");
        // A width of 0 says that the length is a diameter; here round is negative, as in LM-63.
        const bool is_round = width.value == 0 && length.value > 0;
        const double diameter = -length.value;
        result_.opening = {millimetres(is_round ? diameter : width.value),
                           millimetres(is_round ? diameter : length.value),
                           millimetres(heights.front().value)};
    }

    void read_losses()
    {
        lines_.number("the downward flux fraction");
        output_ratio_ = lines_.at_least_zero("the light output ratio").value / 100;
        conversion_ = lines_.positive("the conversion factor of intensities").value;
        const WrittenNumber tilt = lines_.number("the tilt during measurement");
        result_.tilt_when_measured = degrees(tilt.value);
        if (tilt.value != 0)
            file_.warn(tilt.word, "the lamp was tilted when it was measured",
                       "intensities are not turned back by it: say in `mounting` how it lies");
    }

    void read_lamp_sets()
    {
        const int count = lines_.needed("the number of lamp sets", 1, most_lamp_sets).value;
        std::string_view other_flux;
        for (int i = 0; i < count; ++i) {
            const std::string_view flux = read_lamp_set();
            if (result_.lamp_sets.back().total_flux != result_.lamp_sets.front().total_flux)
                other_flux = flux;
        }
        if (!other_flux.empty())
            file_.warn(other_flux, "the lamp sets of this file differ in flux",
                       "intensities are those with the first set");
        const LampSet& used = result_.lamp_sets.front();
        result_.absolute = used.count < 0;
        result_.candela_factor = in_lumens(used.total_flux) / 1000 * conversion_;
        result_.stated_flux_is_of =
            output_ratio_ > 0 ? StatedFlux::luminaire : StatedFlux::bare_lamps;
        result_.stated_flux = used.total_flux * (output_ratio_ > 0 ? output_ratio_ : 1);
    }

    /// Where its flux is written. That several sets stand one after the other, each with its six
    /// lines, and which line is which: from memory, not verified against the format's text.
    std::string_view read_lamp_set()
    {
        LampSet set;
        const std::string_view count = lines_.text("the number of lamps");
        set.count = whole_photometric_number(count).value_or(0);
        if (set.count == 0)
            file_.complain("numbers that cannot be", count,
                           "the number of lamps is `" + shown(count) + "`",
                           "write a whole number, below 0 where the values are absolute");
        set.kind = note_text(lines_.text("the kind of lamps"));
        const WrittenNumber flux = lines_.positive("the flux of the lamps");
        set.total_flux = lumens(flux.value);
        lines_.text("the colour of the light");
        lines_.text("the colour rendering");
        set.watts = lines_.at_least_zero("the power of the lamps").value;
        result_.lamp_sets.push_back(set);
        return flux.word;
    }

    void read_angles()
    {
        planes_ = lines_.numbers(plane_count_, "a C plane");
        gammas_ = lines_.numbers(gamma_count_, "a gamma angle");
        expect_ldt_planes(file_, planes_, stored_);
        expect_ascending(file_, gammas_, "gamma angle");
        expect_within(file_, gammas_, "gamma angle", 0, 180);
        warn_of_part_of_gamma(file_, gammas_);
        warn_of_other_step(planes_, plane_step_, "the C planes are not as far apart as their step");
        warn_of_other_step(gammas_, gamma_step_, "gamma angles are not as far apart as their step");
    }

    /// A step of 0 says that they are not evenly spaced.
    void warn_of_other_step(const std::vector<WrittenNumber>& angles, const WrittenNumber& step,
                            const char* what)
    {
        for (std::size_t i = 1; i < angles.size() && step.value > 0; ++i) {
            const double even = angles.front().value + step.value * double(i);
            if (std::abs(angles[i].value - even) > step_grain_deg)
                return file_.warn(step.word, what, "the angles count, not the step");
        }
    }

    std::vector<Intensity> read_candela()
    {
        std::vector<Intensity> candela;
        const std::size_t count = stored_.count * gamma_count_;
        candela.reserve(std::min(count, file_.text().size()));
        for (std::size_t i = 0; i < count; ++i) {
            const WrittenNumber number = lines_.at_least_zero("an intensity");
            candela.push_back(candelas(number.value * result_.candela_factor));
        }
        return candela;
    }

    PhotometricText file_;
    LdtLines lines_;
    Photometry result_;
    std::size_t plane_count_ = 0;
    std::size_t gamma_count_ = 0;
    WrittenNumber plane_step_;
    WrittenNumber gamma_step_;
    LdtPlanes stored_;
    double output_ratio_ = 0;
    double conversion_ = 1;
    std::vector<WrittenNumber> planes_;
    std::vector<WrittenNumber> gammas_;
};

} // namespace

PhotometryFile read_ldt(std::string_view text, const std::string& name)
{
    return LdtReader(text, name).read();
}

} // namespace glim
