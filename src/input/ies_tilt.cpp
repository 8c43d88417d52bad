#include "input/ies_tilt.h"

#include "input/photometric_angles.h"
#include "input/photometric_text.h"

namespace glim {

namespace {

constexpr const char* cut_short = "the file was cut short: copy or export it again";

/// How the lamp lies in the luminaire, the count, then angles and factors.
void read_factors(PhotometricText& file, IesNumbers& numbers)
{
    const IesNumbers::Number geometry = numbers.next("the lamp's position for TILT");
    const std::optional<int> code = whole_photometric_number(geometry.word);
    if (geometry.value && (!code || *code < 1 || *code > 3))
        file.complain("", geometry.word,
                      "`" + shown(geometry.word) + "` is no position of a lamp for TILT",
                      "write 1, 2 or 3, as LM-63 numbers them");
    const std::size_t count = numbers.next_count("the number of TILT angles");
    const std::vector<WrittenNumber> angles = numbers.next(count, "a TILT angle");
    expect_ascending(file, angles, "TILT angle");
    expect_within(file, angles, "TILT angle", 0, 180);
    for (const WrittenNumber& factor : numbers.next(count, "a TILT factor"))
        if (factor.value < 0)
            file.complain("TILT factors below 0", factor.word,
                          "the TILT factor " + shown(factor.word) + " is below 0",
                          "write 0 or more");
}

void read_other_file(PhotometricText& file, const IesHeader& header, const TiltLookup& tilt_file)
{
    const std::string name(header.tilt_file);
    const std::optional<std::string> text = tilt_file(name);
    if (!text)
        return file.complain("", header.tilt_file,
                             "there is no file `" + shown(name) + "` beside this one",
                             "put it there, or write TILT=NONE if the lamp burns as measured");
    PhotometricText other(*text, name);
    IesNumbers numbers(other, *text, cut_short);
    read_factors(other, numbers);
    numbers.expect_end();
    other.throw_if_any();
}

} // namespace

void read_ies_tilt(PhotometricText& file, const IesHeader& header, IesNumbers& numbers,
                   const TiltLookup& tilt_file)
{
    if (header.tilt == IesTilt::none)
        return;
    file.warn(header.tilt_file, "the factors of TILT are not applied",
              "they are for a lamp that burns tilted from how it was measured");
    if (header.tilt == IesTilt::included)
        read_factors(file, numbers);
    else
        read_other_file(file, header, tilt_file);
}

} // namespace glim
