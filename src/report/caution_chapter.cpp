#include "report/caution_chapter.h"

#include "report/row_words.h"

#include <algorithm>

namespace glim {

namespace {

/// How many of the rows that were asked are not verified in the published text.
std::size_t unverified_rows(const Findings& findings)
{
    std::size_t count = 0;
    for (const CheckFindings& check : findings.checks)
        count += static_cast<std::size_t>(
            std::count_if(check.rows.begin(), check.rows.end(), [](const RowFindings& row) {
                return row.row.citation.provenance != Provenance::read;
            }));
    return count;
}

std::string provenance_caution(const Findings& findings)
{
    std::size_t rows = 0;
    for (const CheckFindings& check : findings.checks)
        rows += check.rows.size();
    return std::to_string(unverified_rows(findings)) + " of " + std::to_string(rows) +
           " rows were not read in the published text: look up each figure in the edition in force "
           "before anybody relies on it. The provenance of every row stands beside it.";
}

} // namespace

std::vector<Block> caution_chapter(const ReportContent& content)
{
    return {
        Heading{1, "What this does not tell"}, Notice{std::string(caution)},
        BulletList{
            {"The lighting regulation in force, local codes and a homologation engineer decide "
             "whether an installation is accepted; this report is one of the papers on their desk.",
             provenance_caution(content.findings),
             "Areas are seen from infinity, along straight lines, through clear surfaces as if "
             "they "
             "were air: refraction, reflection, colour and brightness are not looked at. An area "
             "is "
             "no candela.",
             "Meshes stand for surfaces. The mesh error is an estimate from chord errors, and "
             "chord errors that the study does not give are estimates themselves.",
             "An expected error is two standard deviations of sampling, an estimate; only bounds "
             "that are certified, and areas called exact, are proved for the meshes as given.",
             "Between the directions looked at nothing is proved: a dip of which no direction "
             "around shows anything stays unseen.",
             "What each surface takes is sampled, and ranks the surfaces; what two hide together "
             "counts for both.",
             "Nothing is said of production tolerances, of a moving or loaded vehicle beyond the "
             "states of load named, of dirt or ice."}}};
}

} // namespace glim
