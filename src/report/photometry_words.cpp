#include "report/photometry_facts.h"
#include "units/illuminance.h"
#include "words/intensity_profile.h"
#include "words/light_words.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

constexpr int bar_columns = 40;
constexpr int factor_decimals = 6;
constexpr int share_decimals = 2;

const GoniometerWord& words_of(Goniometer goniometer)
{
    return goniometer_words[static_cast<std::size_t>(goniometer)];
}

std::string at_words(const GoniometerWord& word, const FileAngles& at)
{
    return std::string(word.horizontal) + " " + bare_angle(at.h) + ", " +
           std::string(word.vertical) + " " + bare_angle(at.v);
}

std::string type_words(const Photometry& p)
{
    return "type " + std::string(words_of(p.grid.goniometer).word) + "; " +
           (p.absolute ? "absolute: the lamp as it was measured"
                       : "relative: for the flux that its light sources are said to have");
}

std::string range_words(const PhotometryFacts& facts)
{
    const GoniometerWord& word = words_of(facts.photometry.grid.goniometer);
    const MeasuredRange& r = facts.range;
    return std::string(word.horizontal) + " " + bare_angle(r.h_least) + " to " +
           bare_angle(r.h_most) + ", " + std::string(word.vertical) + " " + bare_angle(r.v_least) +
           " to " + bare_angle(r.v_most) + " deg; beyond it nothing is known";
}

std::string grid_words(const Photometry& p)
{
    const GoniometerWord& word = words_of(p.grid.goniometer);
    return std::to_string(p.filed_horizontals) + " " + std::string(word.horizontal) + " by " +
           std::to_string(p.grid.vertical.size()) + " " + std::string(word.vertical) +
           " in the file, whose numbers x " + rounded(p.candela_factor, factor_decimals) +
           " are candela";
}

std::string difference_words(double difference)
{
    const std::string share =
        rounded((difference < 0 ? -difference : difference) * 100, share_decimals) + " %";
    return share + (difference < 0 ? " less" : " more");
}

std::string stated_words(const PhotometryFacts& facts)
{
    const Photometry& p = facts.photometry;
    if (!p.stated_flux)
        return "none";
    const bool bare = p.stated_flux_is_of == StatedFlux::bare_lamps;
    return flux_words(*p.stated_flux) +
           (bare ? " from the bare light sources" : " out of the lamp") + "; integrated " +
           difference_words(*facts.flux_difference);
}

std::string opening_words(const LitOpening& opening)
{
    const auto size = [](Length l) { return rounded(in_mm(l), 1); };
    const bool is_round = opening.width < Length{} || opening.length < Length{};
    return size(opening.width) + " wide, " + size(opening.length) + " long, " +
           size(opening.height) + " high, in mm" + (is_round ? "; negative stands for round" : "");
}

std::string lamp_set_words(const LampSet& set)
{
    std::string text = set.count > 0 ? std::to_string(set.count) + " x" : "absolute,";
    text += set.kind.empty() ? " not named" : " " + set.kind;
    if (set.total_flux > LuminousFlux{})
        text += ", " + flux_words(set.total_flux);
    return text + ", " + rounded(set.watts, 2) + " W";
}

/// As a screen at a usual distance receives it, square to the light.
std::string illuminance_words(Intensity peak)
{
    constexpr Length screen = millimetres(25000);
    constexpr int lux_decimals = 4;
    return rounded(in_lux(illuminance(peak, screen)), lux_decimals) +
           " lx on a screen 25 m away, by the inverse square";
}

std::vector<Labelled> entries_of(const PhotometryFacts& facts)
{
    const Photometry& p = facts.photometry;
    const GoniometerWord& word = words_of(p.grid.goniometer);
    std::vector<Labelled> entries{
        {"format", p.format + ", " + type_words(p)},
        {"measured", range_words(facts)},
        {"grid", grid_words(p)},
        {"symmetry", std::string(filed_symmetry_words[std::size_t(p.symmetry)].words)},
        {"peak", intensity_words(facts.peak.intensity) + " at " + at_words(word, facts.peak.at)},
        {"", illuminance_words(facts.peak.intensity)},
        {"flux", flux_words(facts.flux) + " within what was measured"},
        {"stated flux", stated_words(facts)},
        {"opening", opening_words(p.opening)}};
    for (const LampSet& set : p.lamp_sets)
        entries.push_back({"light source", lamp_set_words(set)});
    if (p.tilt_when_measured != Angle{})
        entries.push_back({"tilt", angle_words(p.tilt_when_measured) + " when it was measured"});
    if (facts.mounting)
        entries.push_back({"mounting", facts.mounting->what});
    return entries;
}

std::string notes_block(const std::vector<PhotometryNote>& notes, const TextStyle& style)
{
    if (notes.empty())
        return "";
    std::vector<Labelled> entries;
    entries.reserve(notes.size());
    for (const PhotometryNote& note : notes)
        entries.push_back({harmless(note.label), note.text});
    return "\nNotes of the file\n" + labelled_block(entries, 2, style);
}

std::string profiles_block(const Photometry& photometry)
{
    std::vector<IntensityProfile> profiles = intensity_profiles(photometry.grid);
    if (photometry.symmetry == FiledSymmetry::about_pole)
        profiles.pop_back(); // the same once more
    Intensity full;
    for (const IntensityProfile& profile : profiles)
        for (const IntensityProfile::Point& point : profile.points)
            full = std::max(full, point.intensity);
    std::string text;
    for (const IntensityProfile& profile : profiles) {
        text += "\n" + profile.title + "\n";
        for (const std::string& line : profile_lines(profile, full, bar_columns))
            text += "  " + line + "\n";
    }
    return text;
}

} // namespace

std::string photometry_words(const PhotometryFacts& facts, const TextStyle& style)
{
    return wrapped(facts.file, style.columns) + "\n" + labelled_block(entries_of(facts), 2, style) +
           notes_block(facts.photometry.notes, style) + profiles_block(facts.photometry);
}

} // namespace glim
