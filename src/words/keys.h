#pragma once

#include "model/rule_words.h"
#include "model/source_file.h"

#include <string_view>

namespace glim {

// How results spell a choice; as study files and requirement tables do.

std::string_view key_of(Provenance provenance);
std::string_view words_of(Provenance provenance);
std::string_view key_of(AnsweredBy answered_by);
std::string_view key_of(ApprovedParts approved_parts);
std::string_view key_of(Measured quantity);
std::string_view words_of(Measured quantity);
std::string_view key_of(Combine combine);
std::string_view words_of(Combine combine);
std::string_view key_of(HeightOf of);
std::string_view words_of(HeightOf of);
std::string_view key_of(GapFrom from);
std::string_view words_of(GapFrom from);
std::string_view key_of(ReferenceAxis axis);
std::string_view key_of(Side side);
std::string_view key_of(LampFunction function);
std::string_view words_of(LampFunction function);
std::string_view key_of(SurfaceBasis basis);
std::string_view words_of(SurfaceBasis basis);
std::string_view key_of(FileUse use);
std::string_view words_of(FileUse use);

} // namespace glim
