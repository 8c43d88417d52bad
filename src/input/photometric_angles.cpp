#include "input/photometric_angles.h"

#include "input/text_scanner.h"

namespace glim {

namespace {

/// A first and a last angle that the standard knows.
struct Limits {
    double first;
    double last;
    FiledSymmetry symmetry = FiledSymmetry::none;
};

// Type c by LM-63 (90 to 270 since 2002). a and b: V -90 or 0 to 90, H -90 or 0 to 90, and H from 0
// on stands for both sides (that last: from memory, not verified).
constexpr std::array c_planes = {
    Limits{0, 0, FiledSymmetry::about_pole},        Limits{0, 90, FiledSymmetry::both_planes},
    Limits{0, 180, FiledSymmetry::plane_c0_c180},   Limits{0, 360, FiledSymmetry::none},
    Limits{90, 270, FiledSymmetry::plane_c90_c270},
};
constexpr std::array c_gammas = {Limits{0, 90}, Limits{90, 180}, Limits{0, 180}};
constexpr std::array h_or_v = {Limits{-90, 90}, Limits{0, 90}, Limits{-90, 0}};

template <std::size_t n>
const Limits* limits_of(const std::array<Limits, n>& known,
                        const std::vector<WrittenNumber>& angles)
{
    for (const Limits& limits : known)
        if (angles.front().value == limits.first && angles.back().value == limits.last)
            return &limits;
    return nullptr;
}

std::string span_words(const std::vector<WrittenNumber>& angles)
{
    return shown(angles.front().word) + " to " + shown(angles.back().word);
}

void warn_of_part(PhotometricText& file, const std::string& what, const std::string& usual,
                  const std::vector<WrittenNumber>& angles)
{
    file.warn(angles.front().word,
              what + " goes from " + span_words(angles) + " degrees, and the standard asks for " +
                  usual,
              "outside of what was measured the intensity is not known");
}

FiledSymmetry c_symmetry(PhotometricText& file, const std::vector<WrittenNumber>& planes)
{
    if (const Limits* const limits = limits_of(c_planes, planes))
        return limits->symmetry;
    file.complain("", planes.front().word,
                  "the C planes go from " + span_words(planes) +
                      " degrees, and so do not stand for a whole turn",
                  "planes go from 0 to 90, 180 or 360, from 90 to 270, or there is one at 0");
    return FiledSymmetry::none;
}

} // namespace

void expect_ascending(PhotometricText& file, const std::vector<WrittenNumber>& angles,
                      const std::string& what)
{
    for (std::size_t i = 1; i < angles.size(); ++i)
        if (angles[i].value <= angles[i - 1].value)
            file.complain("angles that do not ascend", angles[i].word,
                          "the " + what + " " + shown(angles[i].word) +
                              " is not larger than the one before it, " + shown(angles[i - 1].word),
                          "angles ascend, and each stands once");
}

void expect_within(PhotometricText& file, const std::vector<WrittenNumber>& angles,
                   const std::string& what, double least, double most)
{
    const auto whole = [](double value) { return std::to_string(static_cast<int>(value)); };
    for (const WrittenNumber& angle : angles)
        if (angle.value < least || angle.value > most)
            file.complain("angles out of range", angle.word,
                          "the " + what + " " + shown(angle.word) + " is not within " +
                              whole(least) + " to " + whole(most) + " degrees",
                          "correct the angle");
}

void warn_of_part_of_gamma(PhotometricText& file, const std::vector<WrittenNumber>& gamma)
{
    if (!limits_of(c_gammas, gamma))
        warn_of_part(file, "gamma", "0 to 90, 90 to 180 or 0 to 180", gamma);
}

FiledSymmetry ies_symmetry(PhotometricText& file, Goniometer goniometer,
                           const std::vector<WrittenNumber>& horizontal,
                           const std::vector<WrittenNumber>& vertical)
{
    if (goniometer == Goniometer::c) {
        warn_of_part_of_gamma(file, vertical);
        return c_symmetry(file, horizontal);
    }
    if (!limits_of(h_or_v, vertical))
        warn_of_part(file, "V", "-90 or 0 to 90", vertical);
    if (!limits_of(h_or_v, horizontal))
        warn_of_part(file, "H", "-90 or 0 to 90", horizontal);
    return horizontal.front().value == 0 ? FiledSymmetry::vertical_plane : FiledSymmetry::none;
}

} // namespace glim
