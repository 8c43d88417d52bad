#include "bench/figures.h"

#include "bench/options.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace glim::bench {

namespace {

using Row = std::vector<std::string>;

constexpr int shown_digits = 3;

std::string value_of(const FiguresOfSize& size, const Figure& wanted)
{
    const auto found =
        std::find_if(size.figures.begin(), size.figures.end(), [&](const Figure& figure) {
            return figure.measure == wanted.measure && figure.unit == wanted.unit;
        });
    return found == size.figures.end() ? "" : shown(found->value);
}

/// Every measure once, in the order in which it first comes.
std::vector<Figure> measures_of(const std::vector<FiguresOfSize>& sizes)
{
    std::vector<Figure> all;
    for (const FiguresOfSize& size : sizes)
        for (const Figure& figure : size.figures)
            if (std::none_of(all.begin(), all.end(), [&](const Figure& known) {
                    return known.measure == figure.measure && known.unit == figure.unit;
                }))
                all.push_back(figure);
    return all;
}

std::vector<Row> rows_of(const std::vector<FiguresOfSize>& sizes)
{
    Row title{"measure", "unit"};
    for (const FiguresOfSize& size : sizes)
        title.push_back(short_count(size.triangles));
    title.emplace_back("wanted at 1M");
    std::vector<Row> rows{title};
    for (const Figure& measure : measures_of(sizes)) {
        Row row{measure.measure, measure.unit};
        for (const FiguresOfSize& size : sizes)
            row.push_back(value_of(size, measure));
        row.push_back(measure.target);
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<std::size_t> widths_of(const std::vector<Row>& rows)
{
    std::vector<std::size_t> widths(rows.front().size());
    for (const Row& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths[i], row[i].size());
    return widths;
}

std::string quoted(const std::string& text)
{
    return text.find(',') == std::string::npos ? text : "\"" + text + "\"";
}

} // namespace

std::string shown(double value)
{
    const double size = std::abs(value);
    const bool whole = value == std::floor(value);
    const int before =
        size > 0 && std::isfinite(size) ? static_cast<int>(std::floor(std::log10(size))) + 1 : 1;
    char text[64];
    const auto [end, error] =
        std::to_chars(text, text + sizeof text, value, std::chars_format::fixed,
                      whole ? 0 : std::clamp(shown_digits - before, 0, 9));
    return error == std::errc{} ? std::string(text, end) : "?";
}

std::string table_of(const std::vector<FiguresOfSize>& sizes, bool markdown)
{
    const std::vector<Row> rows = rows_of(sizes);
    const std::vector<std::size_t> widths = widths_of(rows);
    std::string text;
    for (std::size_t r = 0; r < rows.size(); ++r) {
        std::string line = markdown ? "|" : "";
        for (std::size_t i = 0; i < rows[r].size(); ++i)
            line += markdown ? " " + rows[r][i] + " |"
                             : rows[r][i] + std::string(widths[i] - rows[r][i].size() + 2, ' ');
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + "\n";
        if (markdown && r == 0) {
            text += "| --- | --- |";
            for (std::size_t i = 2; i < rows[r].size(); ++i)
                text += i + 1 < rows[r].size() ? " ---: |" : " --- |";
            text += "\n";
        }
    }
    return text;
}

std::string csv_of(const std::vector<FiguresOfSize>& sizes)
{
    std::string text = "triangles,measure,unit,value,wanted_at_1M\n";
    for (const FiguresOfSize& size : sizes)
        for (const Figure& f : size.figures)
            text += std::to_string(size.triangles) + "," + quoted(f.measure) + "," + f.unit + "," +
                    shown(f.value) + "," + quoted(f.target) + "\n";
    return text;
}

} // namespace glim::bench
