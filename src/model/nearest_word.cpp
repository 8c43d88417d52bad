#include "model/nearest_word.h"

#include <algorithm>
#include <numeric>

namespace glim {

namespace {

/// More names than this help nobody.
constexpr std::size_t most_names_listed = 8;

} // namespace

std::size_t edit_distance(std::string_view a, std::string_view b)
{
    // Three rows of the usual table: the swap of neighbours looks two rows back.
    std::vector<std::size_t> before(b.size() + 1), above(b.size() + 1), row(b.size() + 1);
    std::iota(row.begin(), row.end(), 0);
    for (std::size_t i = 1; i <= a.size(); ++i) {
        before = above;
        above = row;
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t exchanged = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            row[j] = std::min({exchanged, above[j] + 1, row[j - 1] + 1});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = std::min(row[j], before[j - 2] + 1);
        }
    }
    return row.back();
}

std::vector<std::string> nearest_first(std::string_view written, std::vector<std::string> known)
{
    std::stable_sort(known.begin(), known.end(), [&](const std::string& a, const std::string& b) {
        return edit_distance(written, a) < edit_distance(written, b);
    });
    return known;
}

std::optional<std::string> nearest_word(std::string_view written,
                                        const std::vector<std::string>& known)
{
    if (known.empty())
        return std::nullopt;
    std::string nearest = nearest_first(written, known).front();
    const std::size_t letters = std::max(written.size(), nearest.size());
    if (3 * edit_distance(written, nearest) > letters)
        return std::nullopt;
    return nearest;
}

std::string listed(const std::vector<std::string>& words, std::string_view joint)
{
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0)
            text += i + 1 < words.size() ? ", " : " " + std::string(joint) + " ";
        text += "`" + words[i] + "`";
    }
    return text;
}

std::string did_you_mean(std::string_view written, const std::vector<std::string>& known)
{
    if (known.empty())
        return "there are none";
    if (const std::optional<std::string> nearest = nearest_word(written, known))
        return "did you mean `" + *nearest + "`?";
    std::vector<std::string> some = nearest_first(written, known);
    const std::size_t left_out = some.size() - std::min(some.size(), most_names_listed);
    some.resize(some.size() - left_out);
    if (left_out == 0)
        return "known are " + listed(some);
    return "known are " + listed(some) + ", and " + std::to_string(left_out) + " more";
}

} // namespace glim
