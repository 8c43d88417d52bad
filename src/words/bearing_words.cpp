#include "words/bearing_words.h"

#include "words/numbers.h"

#include <string_view>

namespace glim {

namespace {

/// The words for one of the two angles.
struct Sense {
    std::string_view positive;
    std::string_view negative;
    std::string_view zero;

    std::string_view of(Angle a) const { return a > Angle() ? positive : negative; }
};

constexpr Sense vertical{"up", "down", "level"};

std::string_view straight_along(ReferenceAxis axis)
{
    switch (axis) {
    case ReferenceAxis::forward:
        return "straight ahead";
    case ReferenceAxis::rearward:
        return "straight behind";
    case ReferenceAxis::outboard:
        break;
    }
    return "straight out to the side";
}

Sense horizontal(const BearingSpeech& speech)
{
    const std::string_view zero = straight_along(speech.axis);
    if (speech.axis == ReferenceAxis::outboard)
        return {"to the front", "to the rear", zero};
    if (speech.side == Side::median)
        return {"to the left", "to the right", zero};
    return {"outboard", "inboard", zero};
}

Angle size_of(Angle a) { return a < Angle() ? -a : a; }

/// Zero as it will be printed: an angle that rounds to "0" has no side.
bool reads_zero(Angle a) { return bare_angle(size_of(a)) == "0"; }

std::string one_angle(Angle a, const Sense& sense)
{
    if (reads_zero(a))
        return std::string(sense.zero);
    return angle_words(size_of(a)) + " " + std::string(sense.of(a));
}

/// `unit` is " deg", or nothing where the reader has just read one.
std::string from_to(Angle least, Angle most, const Sense& sense, const std::string& unit)
{
    const auto end = [&](Angle a, bool with_sense) {
        if (reads_zero(a))
            return std::string(sense.zero);
        const std::string size = bare_angle(size_of(a));
        return with_sense ? size + unit + " " + std::string(sense.of(a)) : size;
    };
    const bool one_side =
        !reads_zero(least) && !reads_zero(most) && sense.of(least) == sense.of(most);
    return end(least, !one_side) + " to " + end(most, true);
}

AxisEnds ends_of(const Sense& sense)
{
    return {std::string(sense.negative), std::string(sense.positive)};
}

} // namespace

AxisEnds ends_of_h(const BearingSpeech& speech) { return ends_of(horizontal(speech)); }

AxisEnds ends_of_v() { return ends_of(vertical); }

std::string bearing_words(const Bearing& b, const BearingSpeech& speech)
{
    return one_angle(b.h, horizontal(speech)) + ", " + one_angle(b.v, vertical);
}

std::string bearing_figures(const Bearing& b)
{
    return "H " + bare_angle(b.h) + ", V " + bare_angle(b.v);
}

std::string range_words(const FieldRectangle& range, const BearingSpeech& speech)
{
    const Sense sideways = horizontal(speech);
    const bool h_is_one = range.h_least == range.h_most;
    const bool v_is_one = range.v_least == range.v_most;
    const std::string h = h_is_one ? one_angle(range.h_least, sideways)
                                   : from_to(range.h_least, range.h_most, sideways, " deg");
    const std::string unit = h.find(" deg") == std::string::npos ? " deg" : "";
    const std::string v = v_is_one ? one_angle(range.v_least, vertical)
                                   : from_to(range.v_least, range.v_most, vertical, unit);
    return h + ", " + v;
}

std::string field_words(const Field& field, const BearingSpeech& speech)
{
    std::string words;
    for (const FieldRectangle& r : field.rectangles)
        words += (words.empty() ? "" : " and ") + range_words(r, speech);
    return words;
}

} // namespace glim
