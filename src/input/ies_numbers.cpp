#include "input/ies_numbers.h"

#include "input/photometric_text.h"
#include "input/text_scanner.h"

namespace glim {

namespace {

constexpr bool is_blank(char c)
{
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\v' || c == '\f';
}

/// Old programs end a text with it.
constexpr char end_of_file_mark = '\x1a';

} // namespace

IesNumbers::IesNumbers(PhotometricText& file, std::string_view numbers, std::string remedy_at_end)
    : file_(file), left_(numbers), remedy_at_end_(std::move(remedy_at_end))
{
}

void IesNumbers::skip_to_word()
{
    std::size_t commas = 0;
    std::size_t i = 0;
    for (; i < left_.size() && (is_blank(left_[i]) || left_[i] == ','); ++i)
        if (left_[i] == ',' && ++commas == 2)
            file_.complain("commas with nothing between", left_.substr(i, 1),
                           "there is no number between this comma and the one before",
                           "write the number, or one comma only");
    left_.remove_prefix(i);
}

std::string_view IesNumbers::next_word()
{
    skip_to_word();
    std::size_t i = 0;
    while (i < left_.size() && !is_blank(left_[i]) && left_[i] != ',')
        ++i;
    const std::string_view word = left_.substr(0, i);
    left_.remove_prefix(i);
    return word;
}

std::string_view IesNumbers::next_written(std::string_view what)
{
    const std::string_view word = next_word();
    if (word.empty())
        file_.refuse("the file ends before " + std::string(what), remedy_at_end_);
    return word;
}

std::size_t IesNumbers::next_choice(std::string_view what, int most, const std::string& remedy)
{
    const std::string_view word = next_written(what);
    const std::optional<int> value = whole_photometric_number(word);
    if (!value || *value < 1 || *value > most)
        file_.refuse(word, std::string(what) + " is `" + shown(word) + "`", remedy);
    return static_cast<std::size_t>(*value);
}

IesNumbers::Number IesNumbers::next(std::string_view what)
{
    const std::string_view word = next_written(what);
    const std::optional<double> value = photometric_number(word);
    if (!value)
        file_.complain("numbers that cannot be read", word,
                       "`" + shown(word) + "` is no number, and here stands " + std::string(what),
                       "write digits such as 12.5 or -1.25e1, at most 1e9");
    return {value, word};
}

std::vector<WrittenNumber> IesNumbers::next(std::size_t count, std::string_view what)
{
    std::vector<WrittenNumber> numbers;
    numbers.reserve(may_hold(count) ? count : 0);
    for (std::size_t i = 0; i < count; ++i) {
        const Number number = next(what);
        numbers.push_back({number.value.value_or(0), number.word});
    }
    return numbers;
}

std::size_t IesNumbers::next_count(std::string_view what)
{
    const std::string_view word = next_written(what);
    const std::optional<int> count = whole_photometric_number(word);
    if (!count || *count < 1)
        file_.refuse(word, std::string(what) + " is `" + shown(word) + "`",
                     "write a whole number from 1 on");
    if (!may_hold(static_cast<std::size_t>(*count)))
        file_.refuse(word,
                     std::string(what) + " is " + shown(word) +
                         ", and the file is too short for so many",
                     "correct the count, or copy or export the file again");
    return static_cast<std::size_t>(*count);
}

void IesNumbers::expect_end()
{
    const std::string_view word = next_word();
    if (word.empty())
        return;
    if (word.front() == end_of_file_mark)
        return file_.warn(word, "the file ends with an old end-of-file mark", "it does no harm");
    file_.complain(
        "", word, "there are more numbers in the file than its counts say",
        "correct the counts of angles, or remove what is too much; a comma divides numbers, "
        "and is no decimal point");
}

} // namespace glim
