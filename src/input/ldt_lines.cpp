#include "input/ldt_lines.h"

#include "input/photometric_text.h"

namespace glim {

namespace {

/// Old programs end a text with it.
constexpr char end_of_file_mark = '\x1a';

} // namespace

std::string_view LdtLines::text(std::string_view what)
{
    if (scanner_.at_end())
        file_.refuse("the file ends before " + std::string(what),
                     "the file was cut short, or a count is too large: copy or export it again");
    const std::string_view line = scanner_.rest();
    scanner_.end_line();
    return line;
}

std::optional<double> LdtLines::readable(std::string_view line, std::string_view what)
{
    const std::optional<double> value = photometric_number(line, DecimalComma::allowed);
    if (!value)
        file_.complain("lines that are no numbers", line,
                       "`" + shown(line) + "` is no number, and here stands " + std::string(what),
                       "each line holds one value, in the order of the format: see whether one is "
                       "missing above");
    return value;
}

WrittenNumber LdtLines::number(std::string_view what)
{
    const std::string_view line = text(what);
    return {readable(line, what).value_or(0), line};
}

WrittenNumber LdtLines::positive(std::string_view what)
{
    const std::string_view line = text(what);
    const std::optional<double> value = readable(line, what);
    if (value && *value <= 0)
        file_.complain("numbers that cannot be", line, std::string(what) + " is " + shown(line),
                       "write a number above 0");
    return {value.value_or(1), line};
}

WrittenNumber LdtLines::at_least_zero(std::string_view what)
{
    const WrittenNumber number = this->number(what);
    if (number.value < 0)
        file_.complain("numbers that cannot be", number.word,
                       std::string(what) + " is " + shown(number.word), "write 0 or more");
    return number;
}

std::vector<WrittenNumber> LdtLines::numbers(std::size_t count, std::string_view what)
{
    std::vector<WrittenNumber> all;
    all.reserve(count);
    for (std::size_t i = 0; i < count; ++i)
        all.push_back(number(what));
    return all;
}

LdtLines::Needed LdtLines::needed(std::string_view what, int least, int most)
{
    const std::string_view line = text(what);
    const std::optional<int> value = whole_photometric_number(line);
    if (!value || *value < least || *value > most)
        file_.refuse(line, std::string(what) + " is `" + shown(line) + "`",
                     "write a whole number from " + std::to_string(least) + " to " +
                         std::to_string(most));
    return {*value, line};
}

void LdtLines::expect_end()
{
    for (; !scanner_.at_end(); scanner_.end_line()) {
        const std::string_view line = scanner_.rest();
        if (line.empty())
            continue;
        if (line.front() == end_of_file_mark)
            return file_.warn(line, "the file ends with an old end-of-file mark",
                              "it does no harm");
        return file_.complain("", line, "there are more lines in the file than its counts say",
                              "correct the counts, or remove what is too much");
    }
}

} // namespace glim
