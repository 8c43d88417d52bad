#pragma once

#include "geometry/field.h"
#include "model/criterion.h"
#include "model/source_file.h"

#include <optional>
#include <string>
#include <vector>

namespace glim {

/// How well a figure of a rule is known. Shown wherever the figure is used.
enum class Provenance {
    read,        ///< in a copy of the published text
    second_hand, ///< in a quotation of it; the edition must be checked
    memory       ///< written from memory: not verified
};

struct Citation {
    Provenance provenance = Provenance::memory;
    std::string source; ///< never empty
    std::string clause; ///< where in the regulation; may be empty
};

/// Which way the row counts H positive. The nouns keep H outboard-positive; a row that is written
/// the other way round is turned as it is read.
enum class PositiveH { outboard, inboard };

/// Who must meet the row when several lamps are asked.
enum class AnsweredBy {
    each,      ///< every one of them, alone
    one_alone, ///< one of them is enough, and it meets the whole row by itself
    together   ///< in each direction their areas add up. Only where a source allows it
};

/// Whether parts that were approved with the lamp count as in the way.
enum class ApprovedParts { counted, ignored };

/// What a condition asks about.
enum class Measured {
    overall_width,
    axis_height,    ///< of the axis of reference, which runs through the centre of reference
    h_plane_height, ///< of the horizontal plane through the centre of reference
    vehicle_category,
    lamp_category,
    optional_lamp, ///< "yes" for a lamp that the regulation does not demand, else "no"
};
/// Whether it is a length with limits, or a word from a list.
bool is_length(Measured quantity);

/// A length holds when at_least <= quantity < below, either of which may be missing; a word when
/// it is one of `one_of`, or none of `none_of`.
struct Condition {
    Measured quantity = Measured::overall_width;
    std::optional<Length> at_least = {};
    std::optional<Length> below = {};
    std::vector<std::string> one_of = {}; ///< of a word: one of the two lists is empty
    std::vector<std::string> none_of = {};

    bool holds(Length value) const;
    bool holds(std::string_view word) const;
};

/// Another field that takes the place of the row's own where all conditions hold.
struct Relaxation {
    std::vector<Condition> when;
    Field field;
    Citation citation;
};

/// Where a regulation asks for the light that a lamp gave at its approval: a rule or a row of
/// another table. Whether the visible part of a lamp still meets it is the photometric proof.
struct ProofOfLight {
    std::string table;
    std::string rule;
};

/// One requirement of a regulation.
struct RuleRow {
    std::string id;
    std::string title;
    Citation citation;
    std::vector<LampFunction> functions; ///< empty: any
    ReferenceAxis axis = ReferenceAxis::forward;
    Field field;                         ///< H outboard-positive; empty unless `asks_directions`
    std::vector<Condition> when;         ///< all must hold, else the row is not applicable
    std::vector<Relaxation> relaxations; ///< the first that holds is used
    Criterion criterion;
    ApprovedParts approved_parts = ApprovedParts::counted;
    AnsweredBy answered_by = AnsweredBy::one_alone;
    std::string union_source; ///< what allows `together`; empty with the others
    std::string state = {};   ///< of load, in which heights count; empty: whatever the study gives
    /// Holds in every fixed position of a movable part, and not where things are drawn.
    bool of_moved_parts = false;
    /// What has to be proved where the row ends in proof due; only with rows that can.
    std::optional<ProofOfLight> proof = {};
};

enum class Combine {
    all_of,
    any_of,
    choose_one ///< the maker's choice, which the study declares; never the one that happens to pass
};

/// Rows and other rules joined to one question.
struct Rule {
    std::string id;
    std::string title;
    Combine combine = Combine::all_of;
    std::vector<std::string> parts; ///< ids of rows or rules of the same table, no circle
    /// Conditions of the vehicle (not of the lamp); where one fails the whole rule is passed over.
    std::vector<Condition> when = {};
    /// Not asked of the lamp in question but of those of the study with these functions, on the
    /// same side. Empty: asked of the lamp itself.
    std::vector<LampFunction> of_other_lamps = {};
};

/// One regulation, or a user's own rules.
struct RuleTable {
    std::string name; ///< as the study calls it: "fmvss-108"
    std::string regulation;
    std::string edition; ///< series, date or state of the text; may be empty
    std::string title;   ///< what it holds, for people; may be empty
    /// What a lamp has to be that is added to those of a vehicle; may be empty.
    std::string added_lamp = {};
    std::vector<RuleRow> rows;
    std::vector<Rule> rules;
    SourceFile source = {}; ///< where its text was read

    const RuleRow* row(std::string_view id) const;
    const Rule* rule(std::string_view id) const;
    /// The row whose gap says which category a lamp of this function may have; none where the table
    /// has no such row.
    const RuleRow* row_of_category(LampFunction function) const;
};

/// The rows that a rule stands on, or the row of that name itself; each once, in the order of the
/// rule's text. None if the table has no such rule or row.
std::vector<const RuleRow*> rows_under(const RuleTable& table, std::string_view id);

struct ProvenanceWord {
    Provenance provenance;
    std::string_view key;   ///< in tables and results
    std::string_view words; ///< for people
};
inline constexpr std::array provenance_words = {
    ProvenanceWord{Provenance::read, "read", "read in the source named"},
    ProvenanceWord{Provenance::second_hand, "second-hand", "second-hand: check the edition"},
    ProvenanceWord{Provenance::memory, "memory", "from memory: not verified"},
};

struct AnsweredByWord {
    AnsweredBy answered_by;
    std::string_view key;
};
inline constexpr std::array answered_by_words = {
    AnsweredByWord{AnsweredBy::each, "each"},
    AnsweredByWord{AnsweredBy::one_alone, "one_alone"},
    AnsweredByWord{AnsweredBy::together, "union"},
};

/// The rules that a rule stands on, itself included; each once, parts after what they are part of.
std::vector<const Rule*> rules_under(const RuleTable& table, std::string_view id);

/// To be repeated wherever an outcome is shown.
inline constexpr std::string_view caution =
    "This informs; it does not certify. The lighting regulation in force, local codes and a "
    "homologation engineer decide.";

} // namespace glim
