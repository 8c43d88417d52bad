#include "words/keys.h"

#include <stdexcept>

namespace glim {

namespace {

/// The row of a table of words that belongs to one choice.
template <class Rows, class Choice, class Row>
const Row& row_of(const Rows& rows, Choice Row::*column, Choice choice)
{
    for (const Row& row : rows)
        if (row.*column == choice)
            return row;
    throw std::logic_error("a choice has no word in its table");
}

} // namespace

std::string_view key_of(Provenance provenance)
{
    return row_of(provenance_words, &ProvenanceWord::provenance, provenance).key;
}

std::string_view words_of(Provenance provenance)
{
    return row_of(provenance_words, &ProvenanceWord::provenance, provenance).words;
}

std::string_view key_of(AnsweredBy answered_by)
{
    return row_of(answered_by_words, &AnsweredByWord::answered_by, answered_by).key;
}

std::string_view key_of(ApprovedParts approved_parts)
{
    return row_of(approved_parts_words, &ApprovedPartsWord::parts, approved_parts).key;
}

std::string_view key_of(Measured quantity)
{
    return row_of(quantity_words, &MeasuredWord::measured, quantity).key;
}

std::string_view words_of(Measured quantity)
{
    return row_of(quantity_words, &MeasuredWord::measured, quantity).words;
}

std::string_view key_of(Combine combine)
{
    return row_of(combine_words, &CombineWord::combine, combine).key;
}

std::string_view words_of(Combine combine)
{
    return row_of(combine_words, &CombineWord::combine, combine).words;
}

std::string_view key_of(HeightOf of) { return row_of(height_of_words, &HeightOfWord::of, of).key; }

std::string_view words_of(HeightOf of)
{
    return row_of(height_of_words, &HeightOfWord::of, of).words;
}

std::string_view key_of(GapFrom from)
{
    return row_of(gap_from_words, &GapFromWord::from, from).key;
}

std::string_view words_of(GapFrom from)
{
    return row_of(gap_from_words, &GapFromWord::from, from).words;
}

std::string_view key_of(ReferenceAxis axis)
{
    return row_of(axis_words, &AxisWord::axis, axis).word;
}

std::string_view key_of(Side side) { return row_of(side_words, &SideWord::side, side).word; }

std::string_view key_of(LampFunction function)
{
    return row_of(function_words, &FunctionWord::function, function).key;
}

std::string_view words_of(LampFunction function)
{
    return row_of(function_words, &FunctionWord::function, function).words;
}

std::string_view key_of(SurfaceBasis basis)
{
    return row_of(surface_basis_words, &SurfaceBasisWord::basis, basis).key;
}

std::string_view words_of(SurfaceBasis basis)
{
    return row_of(surface_basis_words, &SurfaceBasisWord::basis, basis).words;
}

std::string_view key_of(FileUse use) { return row_of(file_use_words, &FileUseWord::use, use).key; }

std::string_view words_of(FileUse use)
{
    return row_of(file_use_words, &FileUseWord::use, use).words;
}

} // namespace glim
