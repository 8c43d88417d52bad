#include "specimens/svg_lines.h"

#include <charconv>
#include <cmath>

namespace glim::test {

namespace {

/// What an attribute of straight lines holds: letters and numbers, each with a blank behind it.
std::vector<Path::Line> parsed(std::string_view d)
{
    std::vector<Path::Line> lines;
    std::vector<double> numbers;
    for (std::size_t at = 0; at < d.size();) {
        const std::size_t blank = std::min(d.find(' ', at), d.size());
        const std::string_view word = d.substr(at, blank - at);
        at = blank + 1;
        if (word == "M")
            lines.emplace_back();
        else if (word == "Z")
            lines.back().closed = true;
        else if (word != "L") {
            double number = 0;
            std::from_chars(word.data(), word.data() + word.size(), number);
            numbers.push_back(number);
            if (numbers.size() % 2 == 0)
                lines.back().points.emplace_back(numbers[numbers.size() - 2], number);
        }
    }
    return lines;
}

} // namespace

std::vector<Path::Line> lines_stroked(const std::string& svg, const std::string& width)
{
    std::vector<Path::Line> all;
    const std::string wanted = "stroke-width:" + width + ";";
    for (std::size_t at = svg.find(wanted); at != std::string::npos;
         at = svg.find(wanted, at + 1)) {
        const std::size_t begin = svg.find(" d=\"", at) + 4;
        const std::size_t end = svg.find('"', begin);
        for (Path::Line& line : parsed(std::string_view(svg).substr(begin, end - begin)))
            all.push_back(std::move(line));
    }
    return all;
}

Rect box_of(const std::vector<Path::Line>& lines)
{
    Point2 least = Point2::Constant(HUGE_VAL), most = -least;
    for (const Path::Line& line : lines)
        for (const Point2& p : line.points) {
            least = least.cwiseMin(p);
            most = most.cwiseMax(p);
        }
    return {least.x(), least.y(), most.x() - least.x(), most.y() - least.y()};
}

} // namespace glim::test
