#include "report/identity_chapter.h"

#include "words/health_words.h"
#include "words/keys.h"
#include "words/look_words.h"
#include "words/numbers.h"
#include "words/run_words.h"
#include "words/verdict_entries.h"

#include <algorithm>
#include <set>

namespace glim {

namespace {

Table files_table(const std::vector<SourceFile>& files)
{
    Table table{
        "Everything that was read. A shipped table stands in the program; its digest is "
        "that of the text it carries.",
        {{"File"}, {"What it is"}, {"Bytes", ColumnKind::figures}, {"SHA-256", ColumnKind::code}},
        {}};
    for (const SourceFile& file : files)
        table.rows.push_back({{file.file},
                              {std::string(words_of(file.use))},
                              {std::to_string(file.is.bytes)},
                              {file.is.sha256}});
    return table;
}

Table frames_table(const std::vector<MeshSource>& meshes)
{
    Table table{"Meshes, with unit and axes as the study gives them. The chord error is how far "
                "facets may lie from the surfaces that they stand for.",
                {{"Mesh"},
                 {"File"},
                 {"Unit"},
                 {"Up"},
                 {"Forward"},
                 {"Chord error", ColumnKind::figures},
                 {"It is"}},
                {}};
    for (const MeshSource& mesh : meshes)
        table.rows.push_back({{mesh.name},
                              {mesh.file},
                              {mesh.unit},
                              {mesh.up},
                              {mesh.forward},
                              {rounded(in_mm(mesh.chord.error), 4) + " mm"},
                              {mesh.chord.estimated ? "estimated" : "as the study gives it"}});
    return table;
}

Table health_table(const std::vector<MeshSource>& meshes)
{
    std::string says;
    Table table{"", {{"Mesh"}}, {}};
    for (const HealthWord& word : health_words) {
        table.columns.push_back({std::string(word.label), ColumnKind::figures});
        if (!word.says.empty() && word.says.front() == ' ')
            says +=
                (says.empty() ? "" : "; ") + std::string(word.label) + ":" + std::string(word.says);
    }
    table.caption = "Health of the meshes: nothing is repaired, all is counted (" + says + ").";
    for (const MeshSource& mesh : meshes) {
        std::vector<TableCell> row{{mesh.name}};
        for (const HealthWord& word : health_words)
            row.push_back({std::to_string(mesh.health.*word.count)});
        table.rows.push_back(std::move(row));
    }
    return table;
}

/// Whether some lamp was asked: rows that apply to none are only named.
bool is_used(const RowFindings& row)
{
    return std::any_of(row.lamps.begin(), row.lamps.end(),
                       [](const LampVerdict& v) { return applies(v); }) ||
           (row.together && applies(*row.together));
}

std::string source_words(const Citation& citation)
{
    return citation.clause.empty() ? citation.source
                                   : citation.source + " (" + citation.clause + ")";
}

Table editions_table(const Findings& findings)
{
    Table table{"The requirement tables, and which text they stand for.",
                {{"Table"}, {"Regulation"}, {"Edition"}},
                {}};
    std::set<std::string> told;
    for (const CheckFindings& check : findings.checks)
        if (told.insert(check.table).second)
            table.rows.push_back(
                {{check.table}, {check.regulation}, {check.edition.empty() ? "-" : check.edition}});
    return table;
}

/// Every row that was asked, once, with its relaxations.
Table rules_table(const Findings& findings)
{
    Table table{"The rows that were asked, and where their figures come from.",
                {{"Table"}, {"Row"}, {"What it is about"}, {"Provenance"}, {"Source"}},
                {}};
    std::set<std::pair<std::string, std::string>> told;
    for (const CheckFindings& check : findings.checks)
        for (const RowFindings& row : check.rows) {
            if (!is_used(row) || !told.emplace(check.table, row.row.id).second)
                continue;
            const auto add = [&](const std::string& id, const Citation& citation) {
                table.rows.push_back({{check.table},
                                      {id},
                                      {row.row.title},
                                      {std::string(words_of(citation.provenance))},
                                      {source_words(citation)}});
            };
            add(row.row.id, row.row.citation);
            for (const Relaxation& relaxation : row.row.relaxations)
                add(row.row.id + ", relaxed", relaxation.citation);
        }
    return table;
}

struct LookTally {
    std::size_t certified = 0, exact = 0;
    Area error, mesh_error;
};

LookTally tally_of(const LampLook& look)
{
    LookTally tally;
    for (std::size_t at = 0; at < look.toward.size(); ++at) {
        tally.certified += look.seen[at].certified ? 1 : 0;
        tally.exact += is_exact(look, at) ? 1 : 0;
        tally.error = std::max(tally.error, uncertainty(look, at));
        tally.mesh_error = std::max(tally.mesh_error, look.mesh_error[at]);
    }
    return tally;
}

Table certainty_table(const Findings& findings)
{
    Table table{"How surely areas are known. Certified: contours prove the bounds. The expected "
                "error is that of the direction where it is largest, and so is the mesh error, an "
                "estimate.",
                {{"Lamp"},
                 {"In the way"},
                 {"Directions", ColumnKind::figures},
                 {"Certified", ColumnKind::figures},
                 {"Exact", ColumnKind::figures},
                 {"Expected error", ColumnKind::figures},
                 {"Mesh error", ColumnKind::figures}},
                {}};
    for (const LampLook& look : findings.looks) {
        if (look.toward.empty()) // asked only where it stands
            continue;
        const LookTally tally = tally_of(look);
        table.rows.push_back({{label_of(look)},
                              {std::string(words_of(look.obstacles))},
                              {std::to_string(look.toward.size())},
                              {std::to_string(tally.certified)},
                              {std::to_string(tally.exact)},
                              {area_words(tally.error)},
                              {area_words(tally.mesh_error)}});
    }
    return table;
}

std::vector<std::string> warning_items(const std::vector<Warning>& warnings)
{
    std::vector<std::string> items;
    items.reserve(warnings.size());
    for (const Warning& w : warnings)
        items.push_back(w.place.words() + ": " + w.what +
                        (w.remedy.empty() ? "" : " (" + w.remedy + ")"));
    return items;
}

Terms run_terms(const ReportContent& content)
{
    const Sampling& sampling = content.findings.sampling;
    Terms terms{
        {{"program", {"cornerglim " + content.facts.program_version}},
         {"command", {content.facts.command + " (in the study's folder)"}},
         {"looked", {looked_words(sampling)}},
         {"certified", {std::string(words_of(sampling.certify))}},
         {"between directions", {"down to " + angle_words(sampling.finest)}},
         {"touching",
          {"what is nearer to the lit face than " + rounded(in_mm(sampling.touch), 4) +
           " mm does not hide it; hidden strips of " + rounded(in_mm(sampling.hairline), 4) +
           " mm along its outline count as touching"}}}};
    return terms;
}

/// What was taken for granted about each lamp, looks that say the same once.
std::vector<std::string> assumption_items(const Findings& findings)
{
    std::vector<std::string> items;
    for (const LampLook& look : findings.looks) {
        std::string words = lamp_words(look);
        if (std::find(items.begin(), items.end(), words) == items.end())
            items.push_back(std::move(words));
    }
    return items;
}

} // namespace

std::vector<Block> identity_chapter(const ReportContent& content)
{
    const RunFacts& facts = content.facts;
    std::vector<Block> blocks{PageBreak{},
                              Heading{1, "What this stands on"},
                              run_terms(content),
                              Heading{2, "Files"},
                              files_table(facts.files),
                              Heading{2, "Meshes"},
                              frames_table(facts.meshes),
                              health_table(facts.meshes),
                              Heading{2, "Requirements"},
                              editions_table(content.findings)};
    Table rules = rules_table(content.findings), certainty = certainty_table(content.findings);
    if (!rules.rows.empty())
        blocks.push_back(std::move(rules));
    const auto add = [&](const std::string& heading, auto block, bool is_empty) {
        if (is_empty)
            return;
        blocks.push_back(Heading{2, heading});
        blocks.push_back(std::move(block));
    };
    BulletList lamps{assumption_items(content.findings)}, warnings{warning_items(facts.warnings)};
    add("Certainty", certainty, certainty.rows.empty());
    add("Lamps, and what was assumed of them", lamps, lamps.items.empty());
    add("Warnings", warnings, warnings.items.empty());
    return blocks;
}

} // namespace glim
