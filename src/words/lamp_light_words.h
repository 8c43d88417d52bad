#pragma once

#include "judgement/findings.h"
#include "words/text_block.h"

#include <string>
#include <vector>

namespace glim {

/// The figure that a row of light is about, where it was found: "0.41 cd left of 1.12 cd
/// (estimate)", "not measured there". Of a row that asks for the most the lamp's own light.
/// Requires: the verdict has light.
std::string light_figure_words(const RuleRow& row, const LampVerdict& verdict);

/// How far the light that is left exceeds what is needed: "+0.11 cd", "-12.3 cd"; "-" where it is
/// not known.
std::string light_margin_words(const LampVerdict& verdict);

/// "would suffice: an estimate; measurement due"
std::string estimate_words(const LightEstimate& estimate);

/// "1a, by the gap to dipped beam, edge to edge: 27.4 mm; the study declares none"; of a declared
/// one that the gap does not allow, that it does not.
std::string category_words(const CategoryByGap& category);

/// The files alone, where what is hidden does not count.
std::string filed_light_words(const LookLight& light);

/// Which shares of light were assumed, and from which files: "...; file indicator.ies".
std::string light_basis_words(const LookLight& light);

/// A verdict's light, item by item: what is left and needed, groups, the estimate with what it
/// stands on, and, of a row of light that stands beside one of area, why the two may answer
/// differently. Where the proof is due without photometric data, that there is no estimate. Empty
/// where there is none of it.
std::vector<Labelled> light_entries(const RuleRow& row, const LampVerdict& verdict,
                                    const LampLook& look);

} // namespace glim
