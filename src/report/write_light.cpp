#include "report/write_light.h"

#include "judgement/obstructed_light.h"
#include "report/file_names.h"
#include "report/write_ies.h"
#include "words/keys.h"
#include "words/lamp_light_words.h"
#include "words/look_words.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// An estimate deserves no more, and the files stay short.
constexpr int significant_digits = 4;

double with_four_digits(double value)
{
    if (!(value > 0))
        return 0;
    const int decimals = significant_digits - 1 - static_cast<int>(std::floor(std::log10(value)));
    const double scale = std::pow(10.0, std::abs(decimals));
    return decimals >= 0 ? std::round(value * scale) / scale : std::round(value / scale) * scale;
}

IntensityGrid with_four_digits(IntensityGrid grid)
{
    for (Intensity& intensity : grid.candela)
        intensity = candelas(with_four_digits(in_candelas(intensity)));
    return grid;
}

bool same_lamp(const LampLook& a, const LampLook& b)
{
    return a.name == b.name && a.twin == b.twin && a.axis == b.axis;
}

/// One look for each lamp and axis that something was asked of: of one lamp, with a file,
/// everything in the way.
std::vector<const LampLook*> looks_with_light(const Findings& findings)
{
    std::vector<const LampLook*> all;
    for (const LampLook& look : findings.looks) {
        const bool known = std::any_of(
            all.begin(), all.end(), [&](const LampLook* other) { return same_lamp(*other, look); });
        if (look.light && !look.toward.empty() && look.standings.size() == 1 &&
            look.obstacles == Obstacles::all && !known)
            all.push_back(&look);
    }
    return all;
}

/// The source's own light sources and opening, which the vehicle does not change.
std::string text_of(const ObstructedLight& left, const Photometry& source,
                    const std::vector<PhotometryNote>& notes)
{
    return ies_text(with_four_digits(left.grid), source.opening, notes,
                    source.lamp_sets.empty() ? 0 : source.lamp_sets.front().watts);
}

std::vector<PhotometryNote> notes_of(const LampLook& look, const Findings& findings)
{
    return {{"TEST", "computed, not measured: an estimate; measurement due"},
            {"TESTLAB", "none"},
            {"ISSUEDATE", "none"},
            {"MANUFAC", "none"},
            {"LUMINAIRE", label_of(look) + ", as it is left on the vehicle of " +
                              (findings.title.empty() ? findings.study_file : findings.title)},
            {"OTHER", "lamp " + look.name + ", side " + std::string(key_of(look.side)) +
                          ", function " + std::string(words_of(look.function))},
            {"OTHER", std::string(caution)},
            {"OTHER", light_basis_words(*look.light)},
            {"OTHER", "H 0, V 0: the " + std::string(key_of(look.axis)) +
                          " reference axis; H to the right of one who looks out from the lamp"}};
}

} // namespace

std::size_t put_obstructed_light(const Session& session, const Findings& findings,
                                 NewFolder& folder, const Workers& workers)
{
    const std::vector<const LampLook*> looks = looks_with_light(findings);
    std::vector<std::string> labels;
    labels.reserve(looks.size());
    for (const LampLook* look : looks)
        labels.push_back(label_of(*look) + " " + std::string(key_of(look->axis)));
    const std::vector<std::string> names = plain_names(labels);
    for (std::size_t i = 0; i < looks.size(); ++i)
        if (const auto light = obstructed_light(session, *looks[i], written_light_step, workers)) {
            const LampLight* source = session.study().light_of(looks[i]->standings.front().lamp);
            folder.put("light/" + names[i] + ".ies",
                       text_of(*light, source->photometry, notes_of(*looks[i], findings)));
        }
    return looks.size();
}

} // namespace glim
