#include "report/caution_chapter.h"

#include <algorithm>
#include <string_view>

namespace glim {

namespace {

constexpr std::string_view who_decides =
    "The lighting regulation in force, local codes and a homologation engineer decide whether an "
    "installation is accepted; this report is one of the papers on their desk.";
constexpr std::string_view what_is_seen =
    "Areas are seen from infinity, along straight lines, through clear surfaces as if they were "
    "air: refraction, reflection and colour are not looked at. An area is no candela. Light is "
    "judged only where the study gives a photometric file, and what is left of it is an estimate "
    "wherever part of the lamp is hidden.";
constexpr std::string_view of_meshes =
    "Meshes stand for surfaces. The mesh error is an estimate from chord errors, and chord errors "
    "that the study does not give are estimates themselves.";
constexpr std::string_view of_errors =
    "An expected error is two standard deviations of sampling, an estimate; only bounds that are "
    "certified, and areas called exact, are proved for the meshes as given.";
constexpr std::string_view between_directions =
    "Between the directions looked at nothing is proved: a dip of which no direction around shows "
    "anything stays unseen.";
constexpr std::string_view of_hiders =
    "What each surface takes is sampled, and ranks the surfaces; what two hide together counts for "
    "both.";
constexpr std::string_view of_the_vehicle =
    "Nothing is said of production tolerances, of other ride heights and loads than the states of "
    "load named, of parts that open, of dirt or ice.";

} // namespace

std::string provenance_caution(const Findings& findings)
{
    std::size_t unverified = 0, rows = 0;
    for (const CheckFindings& check : findings.checks) {
        rows += check.rows.size();
        unverified += static_cast<std::size_t>(
            std::count_if(check.rows.begin(), check.rows.end(), [](const RowFindings& row) {
                return row.row.citation.provenance != Provenance::read;
            }));
    }
    return std::to_string(unverified) + " of " + std::to_string(rows) +
           " rows were not read in the published text: look up each figure in the edition in force "
           "before anybody relies on it. The provenance of every row stands beside it.";
}

std::vector<Block> caution_chapter(const ReportContent& content)
{
    BulletList list{{std::string(who_decides), provenance_caution(content.findings)}};
    for (const std::string_view item :
         {what_is_seen, of_meshes, of_errors, between_directions, of_hiders, of_the_vehicle})
        list.items.emplace_back(item);
    return {Heading{1, "What this does not tell"}, Notice{std::string(caution)}, std::move(list)};
}

} // namespace glim
