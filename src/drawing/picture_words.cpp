#include "drawing/picture_words.h"

#include "model/nearest_word.h"
#include "words/look_words.h"
#include "words/name_list.h"
#include "words/numbers.h"

namespace glim {

namespace {

/// More names than these are a list and no sentence.
constexpr std::size_t most_hiders = 3;

/// "nose, bonnet and 2 more"
std::string hider_words(const std::vector<std::string>& hiders)
{
    const std::size_t told = std::min(most_hiders, hiders.size());
    std::vector<std::string> words(hiders.begin(),
                                   hiders.begin() + static_cast<std::ptrdiff_t>(told));
    if (hiders.size() > told)
        words.push_back(std::to_string(hiders.size() - told) + " more");
    return name_list(words);
}

std::string from_words(const LampLook& look, const Bearing& toward)
{
    return bearing_words(toward, speech_of(look)) + " (" + bearing_figures(toward) + ")";
}

} // namespace

std::string eye_title(const LampLook& look, const Bearing& toward)
{
    return label_of(look) + " from " + bearing_words(toward, speech_of(look));
}

std::string seen_words(const ViewedAreas& areas) { return area_words(areas.visible) + " in view"; }

bool is_told(Area area) { return area_words(area) != area_words(Area()); }

std::string hidden_by_words(const std::string& area, const std::vector<std::string>& hiders)
{
    return area + " hidden" + (hiders.empty() ? "" : " by " + hider_words(hiders));
}

std::string eye_caption(const LampLook& look, const Bearing& toward, const ViewedAreas& areas,
                        const std::vector<std::string>& hiders)
{
    std::string words = label_of(look) + " from " + from_words(look, toward) + ": " +
                        seen_words(areas) + (areas.exact ? " (exact)" : " (sampled)") + " of " +
                        area_words(areas.bare) + " with nothing in the way";
    if (is_told(areas.hidden))
        words += "; " + hidden_by_words(area_words(areas.hidden), hiders);
    if (is_told(areas.own))
        words += "; " + area_words(areas.own) +
                 " hidden by the lamp itself or by what was approved with it";
    words += ".";
    if (is_told(areas.hidden) || is_told(areas.own))
        words += " Hatched is the lit face that is hidden, seen through what hides it.";
    words +=
        " Every surface that can block the lamp is drawn, from afar: the scale is the same all "
        "over.";
    if (!areas.from_look)
        words += " These areas were sampled for the picture: no check looked in this direction.";
    return words;
}

std::string eye_alt(const LampLook& look, const Bearing& toward, const ViewedAreas& areas,
                    const std::vector<std::string>& hiders)
{
    return "The lamp as an eye sees it from " + from_words(look, toward) + ": " +
           seen_words(areas) + ", " +
           (is_told(areas.hidden) ? hidden_by_words(area_words(areas.hidden), hiders)
                                  : std::string("nothing hidden by other parts")) +
           ".";
}

} // namespace glim
