#include "input/read_rule_table.h"

#include "input/file_digest.h"
#include "input/rule_parts.h"
#include "input/rule_rows.h"
#include "input/text_file.h"

namespace glim {

namespace {

void check_format(TableReader& top)
{
    const std::string remedy = "write format = 1 at the top";
    top.demand("format", remedy);
    const std::optional<double> format = top.number("format", "");
    if (format && *format != 1)
        top.complain("format", "this program reads format 1 of requirement tables", remedy);
}

/// The multiplier of a row's light comes from a gap that gives one.
void check_multiplier(TableReader& row, const LightTable& points, const RuleTable& table)
{
    const RuleRow* found = table.row(points.multiplied_by);
    const auto* gap = found ? std::get_if<GapToLamp>(&found->criterion) : nullptr;
    if (!points.multiplied_by.empty() && (!gap || gap->is_category))
        row.complain("criterion",
                     row.words() + " is multiplied by `" + points.multiplied_by +
                         "`, which gives no multiplier",
                     "name a row of this table with a \"gap\" that gives = \"multiplier\"");
}

void read_rows(TableReader& top, RuleIds& ids, RuleTable& table)
{
    std::vector<TableReader> rows = top.tables("row", "[[row]]");
    for (TableReader& row : rows) {
        const std::string id = read_id(row, ids);
        table.rows.push_back(read_row(row, id));
    }
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (const auto* points = std::get_if<LightTable>(&table.rows[i].criterion))
            check_multiplier(rows[i], *points, table);
}

void read_rules(TableReader& top, RuleIds& ids, RuleTable& table)
{
    std::vector<RuleDraft> drafts;
    for (TableReader& rule : top.tables("rule", "[[rule]]"))
        drafts.push_back(read_rule(rule, ids));
    check_parts(drafts, ids, top.complaints());
    for (RuleDraft& draft : drafts)
        table.rules.push_back(std::move(draft.rule));
}

} // namespace

RuleTable parse_rule_table(std::string_view text, const std::string& file, const std::string& name)
{
    const TomlTable toml = parse_toml(text, file);
    Complaints complaints;
    TableReader top(toml, "the table", complaints);
    check_format(top);
    RuleTable table;
    table.name = name;
    table.source = {FileUse::table, file, identity_of(text)};
    top.demand("regulation", "name the regulation, or say whose own rules these are");
    table.regulation = top.text("regulation").value_or("");
    table.edition = top.text("edition").value_or("");
    table.title = top.text("title").value_or("");
    table.added_lamp = top.text("added_lamp").value_or("");
    top.demand("row", "add a [[row]] for each requirement");
    RuleIds ids;
    read_rows(top, ids, table);
    read_rules(top, ids, table);
    top.complain_of_unknown_keys();
    complaints.sort_by_place();
    complaints.throw_if_any();
    return table;
}

RuleTable read_rule_table(const std::filesystem::path& file)
{
    return parse_rule_table(read_text_file(file), file.string(), file.stem().string());
}

} // namespace glim
