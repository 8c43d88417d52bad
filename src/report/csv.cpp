#include "report/csv.h"

namespace glim {

std::string csv_cell(std::string_view text)
{
    if (text.find_first_of(",\"\r\n") == std::string_view::npos)
        return std::string(text);
    std::string quoted = "\"";
    for (const char c : text)
        quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + "\"";
}

std::string csv_row(const std::vector<std::string>& cells)
{
    std::string row;
    for (const std::string& cell : cells)
        row += (&cell == cells.data() ? "" : ",") + csv_cell(cell);
    return row + "\n";
}

} // namespace glim
