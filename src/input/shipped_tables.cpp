#include "input/shipped_tables.h"

#include "input/text_file.h"
#include "model/nearest_word.h"

#include <algorithm>
#include <system_error>

namespace glim {

std::vector<std::string> shipped_table_names()
{
    std::vector<std::string> names;
    for (const ShippedTable& table : shipped_tables())
        names.emplace_back(table.name);
    return names;
}

RuleTable find_rule_table(const std::string& name, const std::filesystem::path& folder,
                          const Place& asked_at)
{
    const bool is_path = name.ends_with(".toml");
    const std::filesystem::path beside = folder / (is_path ? name : name + ".toml");
    std::error_code trouble;
    if (is_path || std::filesystem::exists(beside, trouble))
        return parse_rule_table(read_text_file(beside, asked_at), beside.string(), name);
    for (const ShippedTable& shipped : shipped_tables()) {
        if (shipped.name != name)
            continue;
        RuleTable table = parse_rule_table(shipped.text, name + ".toml (shipped)", name);
        table.source.use = FileUse::shipped_table;
        table.source.file = name + ".toml";
        return table;
    }
    const Place at = asked_at.file.empty() ? Place{name, 0, 0, {}} : asked_at;
    std::string remedy = did_you_mean(name, shipped_table_names());
    if (!nearest_word(name, shipped_table_names()))
        remedy += "; one of your own would be the file `" + beside.string() + "`";
    throw InputError({{at, "there is no requirement table `" + name + "`", remedy}});
}

} // namespace glim
