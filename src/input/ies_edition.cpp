#include "input/ies_edition.h"

#include <string>
#include <utility>

namespace glim {

namespace {

/// Short and mixed forms that are met in the wild.
constexpr std::array<std::pair<std::string_view, IesEdition>, 7> other_forms = {{
    {"IESNA86", IesEdition::of_1986},
    {"IESNA:LM-63-1986", IesEdition::of_1986},
    {"IESNA:LM-63-1991", IesEdition::of_1991},
    {"IESNA95", IesEdition::of_1995},
    {"IESNA02", IesEdition::of_2002},
    {"IESNA2002", IesEdition::of_2002},
    {"IESNA:LM-63-2019", IesEdition::of_2019},
}};

std::string without_blanks_in_capitals(std::string_view line)
{
    std::string text;
    for (const char c : line)
        if (c != ' ' && c != '\t')
            text += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    return text;
}

const IesEditionRow* row_of(IesEdition edition)
{
    return &ies_editions[static_cast<std::size_t>(edition)];
}

} // namespace

std::optional<NamedEdition> ies_edition_in(std::string_view line)
{
    const std::string plain = without_blanks_in_capitals(line);
    for (const IesEditionRow& row : ies_editions)
        if (!row.first_line.empty() && plain == row.first_line)
            return NamedEdition{&row, line == row.first_line};
    for (const auto& [form, edition] : other_forms)
        if (plain == form)
            return NamedEdition{row_of(edition), false};
    return std::nullopt;
}

bool looks_like_ies_edition(std::string_view line)
{
    const std::string plain = without_blanks_in_capitals(line);
    return plain.starts_with("IESNA") || plain.starts_with("IES:") || plain.starts_with("LM-63");
}

} // namespace glim
