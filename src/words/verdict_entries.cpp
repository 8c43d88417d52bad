#include "words/verdict_entries.h"

#include "words/bearing_words.h"
#include "words/blocker_words.h"
#include "words/citation_words.h"
#include "words/criterion_words.h"
#include "words/keys.h"
#include "words/lamp_light_words.h"
#include "words/look_words.h"
#include "words/numbers.h"
#include "words/verdict_words.h"

namespace glim {

namespace {

/// Less than this is smaller than what the figures are rounded to.
constexpr Area least_mesh_error_told = square_millimetres(0.05);

/// Labels only the first line of what belongs together.
void add_lines(std::vector<Labelled>& entries, const std::string& label,
               const std::vector<std::string>& lines, bool laid_out)
{
    for (const std::string& line : lines)
        entries.push_back({&line == lines.data() ? label : "", line, laid_out});
}

std::string_view answered_words(AnsweredBy answered_by)
{
    switch (answered_by) {
    case AnsweredBy::each:
        return "by each lamp";
    case AnsweredBy::together:
        return "by the lamps together";
    case AnsweredBy::one_alone:
        break;
    }
    return "by one lamp alone";
}

std::string asks_words(const RowFindings& row, const LampVerdict& verdict, const LampLook& look)
{
    std::string words = demand_words(row.row, verdict, look);
    if (row.lamps.size() > 1)
        words += ", " + std::string(answered_words(row.row.answered_by));
    return words;
}

void add_areas(std::vector<Labelled>& entries, const RowFindings& row, const LampVerdict& verdict,
               const LampLook& look)
{
    const bool of_area = std::holds_alternative<LeastArea>(row.row.criterion);
    // What is hidden does not count where the lamp's own light is held against a limit.
    const bool of_hiding = !std::holds_alternative<MostIntensity>(row.row.criterion);
    if (of_area)
        entries.push_back({"least in view", least_words(verdict, look)});
    if (of_hiding && (!of_area || verdict.outcome == Outcome::proof_due))
        entries.push_back({"hidden", hidden_words(verdict, look)});
    if (of_hiding && verdict.mesh_error >= least_mesh_error_told)
        entries.push_back({"meshes", mesh_error_words(verdict)});
    entries.push_back({"seen from", worst_words(verdict, look)});
    if (verdict.because != Because::of_the_figures)
        entries.push_back({"because", std::string(words_of(verdict.because))});
    const std::vector<Labelled> light = light_entries(row.row, verdict, look);
    entries.insert(entries.end(), light.begin(), light.end());
    entries.push_back({"passes", coverage_words(verdict)});
    // The points of a table are all that it asks.
    if (verdict.outcome == Outcome::met && !std::holds_alternative<LightTable>(row.row.criterion))
        entries.push_back({"between", between_words(verdict)});
    add_lines(entries, "changes at", crossing_words(verdict, look), false);
    if (!of_hiding)
        return;
    add_lines(entries, "not covered", uncovered_words(verdict, look), false);
    add_lines(entries, "in the way", blocker_table(verdict, look), true);
    if (const std::string patch = patch_words(verdict, look); !patch.empty())
        entries.push_back({"", patch});
}

void add_place(std::vector<Labelled>& entries, const LampVerdict& verdict)
{
    add_lines(entries, "measured", measured_words(verdict), false);
    if (!verdict.follows.empty())
        entries.push_back({"gives", verdict.follows});
    if (verdict.because != Because::of_the_figures)
        entries.push_back({"because", std::string(words_of(verdict.because))});
}

/// Less than this is how exactly axes are written.
bool is_told(Angle turned)
{
    constexpr Angle least = degrees(0.05);
    return turned > least || turned < Angle() - least;
}

} // namespace

std::string lamp_words(const LampLook& look)
{
    std::string words = label_of(look) + ": " + std::string(words_of(look.function)) + ", " +
                        std::string(key_of(look.side)) + "; centre " +
                        rounded(in_mm(look.axis_height), 0) + " mm above the ground (" + look.state;
    words += look.state_stands_in ? ", for want of the rule's own state of load)" : ")";
    if (look.centre_assumed)
        words += ", assumed: the centroid of the lit face";
    if (is_told(look.axis_turned))
        words += "; H counts from its own axis, which points " +
                 bearing_words({look.axis_turned, Angle()}, speech_of(look));
    if (look.surface_basis != SurfaceBasis::declared)
        words += "; its lit face is the " + std::string(words_of(look.surface_basis));
    if (look.twin_is_alike)
        words += "; the scene is symmetric, so the lamp on the other side sees the same";
    return words;
}

std::vector<Labelled> verdict_entries(const RowFindings& row, const LampVerdict& verdict,
                                      const LampLook& look)
{
    std::vector<Labelled> entries{{"asks", asks_words(row, verdict, look)}};
    if (has_areas(verdict))
        add_areas(entries, row, verdict, look);
    else
        add_place(entries, verdict);
    entries.push_back({"lamp", lamp_words(look)});
    if (verdict.category)
        entries.push_back({"category", category_words(*verdict.category)});
    entries.push_back({"source", citation_words(row.row.citation)});
    if (verdict.relaxation)
        entries.push_back(
            {"relaxed by", citation_words(row.row.relaxations[*verdict.relaxation].citation)});
    return entries;
}

} // namespace glim
