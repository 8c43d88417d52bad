#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace glim {

/// The editions of LM-63 that are read; they differ in their first line and in the second factor.
enum class IesEdition { of_1986, of_1991, of_1995, of_2002, of_2019 };

/// What stands beside the ballast factor.
enum class SecondFactor {
    multiplies, ///< the ballast-lamp factor of 1986 and 1991
    reserved,   ///< 1995 and 2002: always 1
    generation, ///< 2019: how the file came about, no factor
};

struct IesEditionRow {
    IesEdition edition;
    std::string_view first_line; ///< empty: the edition has none
    std::string_view name;
    SecondFactor second_factor; // which edition has what: from memory, not verified
    /// Keywords that the edition demands, the rest of the places empty. From memory, not verified.
    std::array<std::string_view, 4> keywords;
};
inline constexpr std::array ies_editions = {
    IesEditionRow{IesEdition::of_1986, "", "LM-63-1986", SecondFactor::multiplies, {}},
    IesEditionRow{IesEdition::of_1991,
                  "IESNA91",
                  "LM-63-1991",
                  SecondFactor::multiplies,
                  {"TEST", "MANUFAC"}},
    IesEditionRow{IesEdition::of_1995,
                  "IESNA:LM-63-1995",
                  "LM-63-1995",
                  SecondFactor::reserved,
                  {"TEST", "MANUFAC"}},
    IesEditionRow{IesEdition::of_2002,
                  "IESNA:LM-63-2002",
                  "LM-63-2002",
                  SecondFactor::reserved,
                  {"TEST", "TESTLAB", "ISSUEDATE", "MANUFAC"}},
    IesEditionRow{IesEdition::of_2019,
                  "IES:LM-63-2019",
                  "LM-63-2019",
                  SecondFactor::generation,
                  {"TEST", "TESTLAB", "ISSUEDATE", "MANUFAC"}},
};

/// A first line that names an edition. `exactly` is false for one that does so in a way of its own:
/// with blanks, in small letters, or in the short form that some programs write.
struct NamedEdition {
    const IesEditionRow* row;
    bool exactly;
};
std::optional<NamedEdition> ies_edition_in(std::string_view line);

/// Whether the line wants to name an edition, known or not.
bool looks_like_ies_edition(std::string_view line);

} // namespace glim
