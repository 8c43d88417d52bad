#include "input/ies_lamp.h"

#include "input/photometric_text.h"
#include "input/text_scanner.h"

namespace glim {

namespace {

constexpr double mm_per_foot = 304.8;
constexpr double mm_per_metre = 1000;

class LampReader {
public:
    LampReader(PhotometricText& file, IesNumbers& numbers, const IesEditionRow& edition)
        : file_(file), numbers_(numbers), edition_(edition)
    {
    }

    IesLamp read()
    {
        read_source();
        const double multiplier = positive("the candela multiplier");
        lamp_.verticals = numbers_.next_count("the number of vertical angles");
        lamp_.horizontals = numbers_.next_count("the number of horizontal angles");
        read_type();
        read_opening();
        lamp_.lamp_factor = positive("the ballast factor");
        read_second_factor();
        lamp_.candela_factor = multiplier * lamp_.lamp_factor;
        lamp_.lamps.watts = at_least_zero("the input power");
        return lamp_;
    }

private:
    double positive(std::string_view what)
    {
        const IesNumbers::Number number = numbers_.next(what);
        if (number.value && *number.value <= 0)
            complain(number, std::string(what) + " is " + shown(number.word),
                     "write a number above 0");
        return number.value.value_or(1);
    }

    double at_least_zero(std::string_view what)
    {
        const IesNumbers::Number number = numbers_.next(what);
        if (number.value && *number.value < 0)
            complain(number, std::string(what) + " is " + shown(number.word), "write 0 or more");
        return number.value.value_or(0);
    }

    void read_source()
    {
        const IesNumbers::Number count = numbers_.next("the number of lamps");
        const std::optional<int> whole = whole_photometric_number(count.word);
        if (count.value && (!whole || *whole < 1))
            complain(count, "the number of lamps is " + shown(count.word),
                     "write a whole number from 1 on");
        lamp_.lamps.count = whole.value_or(1);
        const IesNumbers::Number flux = numbers_.next("the lumens of a lamp");
        lamp_.absolute = flux.value == -1;
        if (flux.value && *flux.value <= 0 && !lamp_.absolute)
            complain(flux, "the lumens of a lamp are " + shown(flux.word),
                     "write them, or -1 where the intensities are absolute");
        if (!lamp_.absolute)
            lamp_.lamps.total_flux = lumens(lamp_.lamps.count * flux.value.value_or(0));
    }

    void read_type()
    {
        constexpr std::array by_code = {Goniometer::c, Goniometer::b, Goniometer::a};
        const std::size_t code = numbers_.next_choice(
            "the type of the goniometer", 3, "write 1 for type C, 2 for type B or 3 for type A");
        lamp_.goniometer = by_code[code - 1];
    }

    void read_opening()
    {
        const IesNumbers::Number unit = numbers_.next("the unit of the lit opening");
        const bool in_feet = unit.value == 1;
        if (unit.value && !in_feet && *unit.value != 2)
            complain(unit, "`" + shown(unit.word) + "` is no unit of the lit opening",
                     "write 1 for feet or 2 for metres");
        const auto next_size = [&](std::string_view what) {
            return millimetres(numbers_.next(what).value.value_or(0) *
                               (in_feet ? mm_per_foot : mm_per_metre));
        };
        lamp_.opening.width = next_size("the width of the lit opening");
        lamp_.opening.length = next_size("the length of the lit opening");
        lamp_.opening.height = next_size("the height of the lit opening");
    }

    void read_second_factor()
    {
        if (edition_.second_factor == SecondFactor::multiplies) {
            lamp_.lamp_factor *= positive("the ballast-lamp factor");
            return;
        }
        const IesNumbers::Number number = numbers_.next("the number after the ballast factor");
        if (edition_.second_factor == SecondFactor::reserved && number.value && *number.value != 1)
            complain(number,
                     "the number after the ballast factor is " + shown(number.word) + ", and " +
                         std::string(edition_.name) + " has no use for it",
                     "write 1; if it is a factor, put it into the candela multiplier");
    }

    void complain(const IesNumbers::Number& number, std::string what, std::string remedy)
    {
        file_.complain("numbers that cannot be", number.word, std::move(what), std::move(remedy));
    }

    PhotometricText& file_;
    IesNumbers& numbers_;
    const IesEditionRow& edition_;
    IesLamp lamp_;
};

} // namespace

IesLamp read_ies_lamp(PhotometricText& file, IesNumbers& numbers, const IesEditionRow& edition)
{
    return LampReader(file, numbers, edition).read();
}

} // namespace glim
