#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace glim {

/// A figure of which the user knows a range, or one number alone: then all three are it.
struct Range {
    double low = 0, likely = 0, high = 0; ///< in this order, none above the next
    static Range of(double one) { return {one, one, one}; }
    bool is_one() const { return low == high; }
    friend bool operator==(const Range&, const Range&) = default;
};

/// How a cost counts: again for each vehicle, or once for the programme.
enum class CostBasis { a_vehicle, once };

/// What an option costs, entry by entry. Money in the user's own currency; hours and changes are
/// counted, and cost what [costs] says that one of them costs.
enum class CostEntry { parts, harness, fitting, tooling, station, hours, changes };
struct CostEntryWord {
    CostEntry entry;
    std::string_view key;
    CostBasis basis;
    bool counted;           ///< a count, to be multiplied by a rate; else money
    std::string_view words; ///< for people
};
inline constexpr std::array cost_entry_words = {
    CostEntryWord{CostEntry::parts, "parts", CostBasis::a_vehicle, false, "parts"},
    CostEntryWord{CostEntry::harness, "harness", CostBasis::a_vehicle, false, "harness"},
    CostEntryWord{CostEntry::fitting, "fitting", CostBasis::a_vehicle, false, "fitting"},
    CostEntryWord{CostEntry::tooling, "tooling", CostBasis::once, false, "tooling"},
    CostEntryWord{CostEntry::station, "station", CostBasis::once, false, "assembly station"},
    CostEntryWord{CostEntry::hours, "hours", CostBasis::once, true, "engineering hours"},
    CostEntryWord{CostEntry::changes, "changes", CostBasis::once, true, "engineering changes"},
};

/// One figure an entry, in the order of cost_entry_words; none where the user gives none.
using CostFigures = std::array<std::optional<Range>, cost_entry_words.size()>;

/// What the user knows of the programme: [costs]. Nothing is filled in.
struct Programme {
    std::string currency;        ///< as sums are labelled
    std::optional<Range> volume; ///< vehicles a year
    std::optional<Range> years;
    std::optional<Range> hour;   ///< what one engineering hour costs
    std::optional<Range> change; ///< what one engineering change costs
};

} // namespace glim
