#include "input/read_ies.h"

#include "input/filed_poles.h"
#include "input/ies_header.h"
#include "input/ies_lamp.h"
#include "input/ies_numbers.h"
#include "input/ies_tilt.h"
#include "input/photometric_angles.h"
#include "input/text_scanner.h"

namespace glim {

namespace {

constexpr const char* cut_short =
    "the file was cut short, or a count is too large: copy or export it again";

class IesReader {
public:
    IesReader(std::string_view text, const std::string& name) : file_(text, name) {}

    PhotometryFile read(const TiltLookup& tilt_file)
    {
        const IesHeader header = read_ies_header(file_);
        IesNumbers numbers(file_, header.numbers, cut_short);
        read_ies_tilt(file_, header, numbers, tilt_file);
        const IesLamp lamp = read_ies_lamp(file_, numbers, *header.edition);
        read_angles(numbers, lamp);
        IntensityGrid filed{lamp.goniometer, angles_in(horizontal_), angles_in(vertical_), {}};
        filed.candela = read_candela(numbers, lamp);
        numbers.expect_end();
        check_closing_plane(filed);
        file_.throw_if_any();
        warn_of_poles(file_, filed, {horizontal_, vertical_});
        return {photometry_of(header, lamp, filed), file_.take_warnings()};
    }

private:
    void read_angles(IesNumbers& numbers, const IesLamp& lamp)
    {
        vertical_ = numbers.next(lamp.verticals, "a vertical angle");
        horizontal_ = numbers.next(lamp.horizontals, "a horizontal angle");
        expect_ascending(file_, vertical_, "vertical angle");
        expect_ascending(file_, horizontal_, "horizontal angle");
        const bool is_c = lamp.goniometer == Goniometer::c;
        expect_within(file_, vertical_, "vertical angle", is_c ? 0 : -90, is_c ? 180 : 90);
        expect_within(file_, horizontal_, "horizontal angle", is_c ? 0 : -90, is_c ? 360 : 90);
        if (vertical_.size() < 2)
            complain_of_one(vertical_, "vertical");
        if (horizontal_.size() < 2 && !is_c)
            complain_of_one(horizontal_, "horizontal");
        symmetry_ = ies_symmetry(file_, lamp.goniometer, horizontal_, vertical_);
    }

    void complain_of_one(const std::vector<WrittenNumber>& angles, const std::string& which)
    {
        file_.complain("", angles.front().word,
                       "there is one " + which +
                           " angle, and nothing is known to either side of it",
                       "export the file with two " + which + " angles at least");
    }

    std::vector<Intensity> read_candela(IesNumbers& numbers, const IesLamp& lamp)
    {
        const std::size_t count = lamp.verticals * lamp.horizontals;
        if (!numbers.may_hold(count))
            file_.refuse("the counts of angles ask for " + std::to_string(count) +
                             " intensities, and the file is too short for so many",
                         cut_short);
        std::vector<Intensity> candela;
        candela.reserve(count);
        for (std::size_t i = 0; i < count; ++i) {
            const IesNumbers::Number number = numbers.next("an intensity");
            if (number.value && *number.value < 0)
                file_.complain("intensities below 0", number.word,
                               "the intensity " + shown(number.word) + " is below 0",
                               "correct it: light is not negative");
            candela.push_back(candelas(number.value.value_or(0) * lamp.candela_factor));
        }
        return candela;
    }

    /// C 0 and C 360 are one plane.
    void check_closing_plane(const IntensityGrid& filed)
    {
        if (filed.goniometer != Goniometer::c || filed.horizontal.back() != degrees(360))
            return;
        const std::size_t last = filed.horizontal.size() - 1;
        for (std::size_t v = 0; v < filed.vertical.size(); ++v)
            if (filed.at(0, v) != filed.at(last, v))
                return file_.warn(horizontal_.back().word,
                                  "the planes C 0 and C 360 are one, and differ in this file",
                                  "each is used on its own side");
    }

    Photometry photometry_of(const IesHeader& header, const IesLamp& lamp,
                             const IntensityGrid& filed) const
    {
        Photometry photometry;
        photometry.format = header.edition->name;
        photometry.grid = expanded(filed, symmetry_);
        photometry.symmetry = symmetry_;
        photometry.filed_horizontals = lamp.horizontals;
        photometry.absolute = lamp.absolute;
        if (!lamp.absolute)
            photometry.stated_flux = lamp.lamps.total_flux * lamp.lamp_factor;
        photometry.candela_factor = lamp.candela_factor;
        photometry.lamp_sets = {lamp.lamps};
        photometry.opening = lamp.opening;
        photometry.notes = header.notes;
        return photometry;
    }

    PhotometricText file_;
    std::vector<WrittenNumber> vertical_;
    std::vector<WrittenNumber> horizontal_;
    FiledSymmetry symmetry_ = FiledSymmetry::none;
};

} // namespace

PhotometryFile read_ies(std::string_view text, const std::string& name, const TiltLookup& tilt_file)
{
    return IesReader(text, name).read(tilt_file);
}

} // namespace glim
