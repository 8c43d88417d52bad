#include "input/read_curve.h"

#include "input/capped_complaints.h"
#include "input/number_word.h"
#include "input/text_scanner.h"

#include <charconv>
#include <optional>

namespace glim {

namespace {

constexpr TextRules obj_rules{.hash_begins_comment = true, .backslash_joins_lines = true};

class CurveReader {
public:
    CurveReader(std::string_view text, const std::string& name)
        : text_(text), name_(name), scanner_(text, obj_rules), complaints_(name)
    {
    }

    std::vector<Point> read();

private:
    void read_point(std::string_view keyword);
    void read_line();
    std::optional<std::size_t> place(std::string_view word);
    void take(std::size_t place, std::string_view word, bool begins_line);
    void complain(const std::string& kind, std::string_view word, std::string what,
                  std::string remedy);

    std::string_view text_;
    const std::string& name_;
    TextScanner scanner_;
    CappedComplaints complaints_;
    std::vector<Point> points_;
    std::vector<std::size_t> order_; ///< places in `points_`
};

std::vector<Point> CurveReader::read()
{
    for (; !scanner_.at_end(); scanner_.end_line()) {
        const std::string_view keyword = scanner_.word();
        if (keyword == "v")
            read_point(keyword);
        else if (keyword == "l")
            read_line();
    }
    if (order_.size() > 1 && points_[order_.front()] == points_[order_.back()])
        order_.pop_back();
    if (order_.size() < 3 && complaints_.empty())
        complain("", text_.substr(0, 0), "the lines of this file enclose nothing",
                 "write points as `v x y z` and the curve as `l 1 2 3 ...`, three at least");
    complaints_.throw_if_any();
    std::vector<Point> curve;
    for (const std::size_t place : order_)
        curve.push_back(points_[place]);
    return curve;
}

void CurveReader::read_point(std::string_view keyword)
{
    Point point = Point::Zero();
    int count = 0;
    for (auto word = scanner_.word(); !word.empty() && count < 3; word = scanner_.word()) {
        const std::optional<double> value = coordinate_in(word);
        if (!value) {
            const NumberTrouble trouble = number_trouble(word);
            complain("numbers that cannot be used", word, trouble.what, trouble.remedy);
        }
        point[count++] = value.value_or(0);
    }
    if (count < 3)
        complain("points with a wrong count of numbers", keyword,
                 "a point needs 3 numbers, and this has " + std::to_string(count),
                 "write x, y and z");
    points_.push_back(point);
}

void CurveReader::read_line()
{
    bool begins_line = true;
    for (auto word = scanner_.word(); !word.empty(); word = scanner_.word()) {
        if (const std::optional<std::size_t> found = place(word))
            take(*found, word, begins_line);
        begins_line = false;
    }
}

/// A corner of a line is the number of a point, perhaps with that of its texture behind a slash.
std::optional<std::size_t> CurveReader::place(std::string_view word)
{
    const std::string_view number = word.substr(0, word.find('/'));
    std::int64_t value = 0;
    const char* const end = number.data() + number.size();
    const auto [stop, error] = std::from_chars(number.data(), end, value);
    const auto count = static_cast<std::int64_t>(points_.size());
    const std::int64_t found = value > 0 ? value - 1 : count + value;
    if (stop == end && error == std::errc{} && value != 0 && found >= 0 && found < count)
        return static_cast<std::size_t>(found);
    complain("corners on points that are not there", word,
             "there is no point `" + shown(word) + "` before this line",
             "write every point before the lines that use it; they count from 1");
    return std::nullopt;
}

/// The next line goes on where the one before it ended.
void CurveReader::take(std::size_t place, std::string_view word, bool begins_line)
{
    if (order_.empty() || !begins_line) {
        order_.push_back(place);
        return;
    }
    if (points_[order_.back()] != points_[place])
        complain("lines that do not follow each other", word,
                 "this line does not begin where the one before it ended",
                 "write the curve as one line after the other, closed, and nothing else");
}

void CurveReader::complain(const std::string& kind, std::string_view word, std::string what,
                           std::string remedy)
{
    complaints_.add(kind, [&] {
        return Complaint{place_in(text_, name_, word), std::move(what), std::move(remedy)};
    });
}

} // namespace

std::vector<Point> read_curve(std::string_view text, const std::string& name)
{
    return CurveReader(text, name).read();
}

} // namespace glim
