#include "input/luminance_map.h"

#include "input/number_word.h"
#include "input/text_scanner.h"

#include <algorithm>

namespace glim {

namespace {

constexpr std::string_view separators = ",; \t";

class CsvReader {
public:
    CsvReader(std::string_view text, const std::string& name) : text_(text), name_(name) {}

    GreyMap map()
    {
        for (TextScanner scanner(text_); !scanner.at_end(); scanner.end_line())
            if (const std::string_view line = scanner.rest(); !line.empty() && line.front() != '#')
                add_row(line);
        complaints_.throw_if_any();
        return std::move(map_);
    }

private:
    void add_row(std::string_view line)
    {
        std::size_t columns = 0;
        for (std::size_t from = line.find_first_not_of(separators);
             from != std::string_view::npos;) {
            const std::size_t to = std::min(line.find_first_of(separators, from), line.size());
            add_number(line.substr(from, to - from));
            ++columns;
            from = line.find_first_not_of(separators, to);
        }
        if (map_.rows++ == 0)
            map_.columns = columns;
        if (columns != map_.columns && ++uneven_ == 1)
            complaints_.add(place_in(text_, name_, line),
                            "this row has " + std::to_string(columns) + " numbers and the first " +
                                std::to_string(map_.columns),
                            "give every row as many numbers");
    }

    void add_number(std::string_view word)
    {
        const std::optional<double> number = coordinate_in(word);
        if ((!number || *number < 0) && ++wrong_ <= most_told)
            complaints_.add(place_in(text_, name_, word), "`" + shown(word) + "` is no brightness",
                            "write a number of 0 or more, with a decimal point");
        map_.grey.push_back(static_cast<float>(number.value_or(0)));
    }

    /// More complaints of one kind nobody reads.
    static constexpr int most_told = 5;

    std::string_view text_;
    const std::string& name_;
    Complaints complaints_;
    GreyMap map_;
    int uneven_ = 0, wrong_ = 0;
};

} // namespace

GreyMap read_luminance_map(std::string_view bytes, const std::string& name)
{
    const Place place{name, 0, 0, {}};
    if (!looks_like_png(bytes) && !looks_like_text(bytes))
        refuse(place, "this is neither a PNG file nor a table of numbers",
               "save the picture as a grey PNG, or as rows of numbers");
    GreyMap map = looks_like_png(bytes) ? read_grey_png(bytes, name) : CsvReader(bytes, name).map();
    if (std::none_of(map.grey.begin(), map.grey.end(), [](float g) { return g > 0; }))
        refuse(place, "this picture is dark all over", "look at what it was exported from");
    return map;
}

} // namespace glim
