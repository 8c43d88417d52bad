#pragma once

#include "drawing/eye_view.h"

namespace glim {

// What is said beside an eye's view.

/// "indicator from 45 deg inboard, level"
std::string eye_title(const LampLook& look, const Bearing& toward);

/// "841.2 mm2 in view"
std::string seen_words(const ViewedAreas& areas);

/// Whether it is more than nothing as `area_words` rounds it.
bool is_told(Area area);

/// "1594 mm2 hidden by nose and bonnet"; `hiders` by what they take, the
/// largest first.
std::string hidden_by_words(const std::string& area, const std::vector<std::string>& hiders);

/// How to read the picture, and what it shows.
std::string eye_caption(const LampLook& look, const Bearing& toward, const ViewedAreas& areas,
                        const std::vector<std::string>& hiders);

/// The same for those who cannot see it.
std::string eye_alt(const LampLook& look, const Bearing& toward, const ViewedAreas& areas,
                    const std::vector<std::string>& hiders);

} // namespace glim
