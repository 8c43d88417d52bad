#include "app/request_of.h"

#include <charconv>

namespace glim {

namespace {

/// The whole word as a decimal number; the same in every country.
template <class Number>
std::optional<Number> number_in(const std::string& word)
{
    Number number{};
    const char* end = word.data() + word.size();
    const auto [stopped, trouble] = std::from_chars(word.data(), end, number);
    if (trouble != std::errc() || stopped != end)
        return std::nullopt;
    return number;
}

std::optional<Angle> read_step(const Words& words, Complaints& complaints)
{
    if (!words.step)
        return std::nullopt;
    const std::optional<double> step = number_in<double>(*words.step);
    // Written so that "nan" fails too.
    if (step && *step > 0 && *step <= in_degrees(largest_step))
        return degrees(*step);
    complaints.add(command_line_place(), "--step `" + *words.step + "` is no usable angle",
                   "give degrees above 0, at most 45, such as --step 0.5");
    return std::nullopt;
}

unsigned read_threads(const Words& words, Complaints& complaints)
{
    constexpr unsigned most_threads = 1024; // more is a slip of the finger
    const std::optional<unsigned> threads = number_in<unsigned>(words.threads.value_or("0"));
    if (threads && *threads <= most_threads)
        return *threads;
    complaints.add(command_line_place(), "--threads `" + *words.threads + "` is no usable number",
                   "give a whole number up to 1024, or 0 for all cores");
    return 0;
}

std::optional<std::filesystem::path> read_out(const Words& words, Complaints& complaints)
{
    if (words.out && words.out->empty())
        complaints.add(command_line_place(), "--out is given an empty name",
                       "write a name after it, or leave --out away");
    return words.out;
}

} // namespace

Request check_request(const Words& words, Complaints& complaints)
{
    return CheckRequest{.study = words.argument.value_or(""),
                        .out = read_out(words, complaints),
                        .step = read_step(words, complaints),
                        .threads = read_threads(words, complaints),
                        .json = words.json,
                        .quiet = words.quiet};
}

Request inspect_request(const Words& words, Complaints&)
{
    return InspectRequest{.file = words.argument.value_or(""), .json = words.json};
}

Request new_request(const Words& words, Complaints& complaints)
{
    return NewRequest{.mesh = words.argument.value_or(""),
                      .out = read_out(words, complaints),
                      .force = words.force};
}

Request tables_request(const Words& words, Complaints&)
{
    return TablesRequest{.table = words.argument, .json = words.json};
}

Request request_of(const Command& command, const Words& words)
{
    Complaints complaints;
    const bool nothing_said = !words.argument || words.argument->empty();
    if (command.needs_argument() && nothing_said)
        complaints.add(
            command_line_place(),
            "`" + std::string(command.name) + "` needs a " + std::string(command.argument),
            "write cornerglim " + std::string(command.name) + " " + std::string(command.argument));
    Request request = command.read(words, complaints);
    complaints.throw_if_any();
    return request;
}

} // namespace glim
