#pragma once

#include "drawing/option_views.h"
#include "remedy/comparison.h"
#include "report/document.h"

namespace glim {

/// What a comparison's page is made of.
struct ComparedPictures {
    std::vector<ComparedView> views;
    std::vector<std::vector<OptionView>> options; ///< one an option, in it one a view
};

/// Options side by side: answers, parts, surfaces, costs; where one overtakes another; pictures of
/// each option from the same eye; each option with its arithmetic.
Document comparison_document(const Comparison& comparison, const ComparedPictures& pictures,
                             const std::vector<std::string>& names);

} // namespace glim
