#include "app/request_of.h"

#include "judgement/surface_margins.h"
#include "machine/day.h"

#include <charconv>
#include <cmath>

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

std::optional<Length> read_reach(const Words& words, Complaints& complaints)
{
    if (!words.reach)
        return std::nullopt;
    const std::optional<double> reach = number_in<double>(*words.reach);
    // Written so that "nan" fails too.
    if (reach && *reach > in_mm(margin_accuracy) && *reach <= in_mm(longest_reach))
        return millimetres(*reach);
    complaints.add(command_line_place(), "--reach `" + *words.reach + "` is no usable length",
                   "give mm above 0.05, at most 500, such as --reach 20");
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

/// "H,V" in degrees.
std::optional<Bearing> bearing_in(const std::string& word)
{
    const std::size_t comma = word.find(',');
    if (comma == std::string::npos)
        return std::nullopt;
    const auto h = number_in<double>(word.substr(0, comma));
    const auto v = number_in<double>(word.substr(comma + 1));
    // Written so that "nan" fails too.
    if (!h || !v || !(std::abs(*h) <= 180) || !(std::abs(*v) <= 90))
        return std::nullopt;
    return Bearing{degrees(*h), degrees(*v)};
}

Bearing read_toward(const Words& words, Complaints& complaints)
{
    const char* remedy = "give degrees outboard (inboard below 0), a comma, degrees up (down below "
                         "0), such as --toward -45,0";
    if (!words.toward) {
        complaints.add(command_line_place(), "`picture` does not say from where to look", remedy);
        return {};
    }
    const std::optional<Bearing> toward = bearing_in(*words.toward);
    if (!toward)
        complaints.add(command_line_place(), "--toward `" + *words.toward + "` is no direction",
                       remedy);
    return toward.value_or(Bearing{});
}

std::optional<std::filesystem::path> read_out(const Words& words, Complaints& complaints)
{
    if (words.out && words.out->empty())
        complaints.add(command_line_place(), "--out is given an empty name",
                       "write a name after it, or leave --out away");
    return words.out;
}

std::optional<std::string> read_date(const Words& words, Complaints& complaints)
{
    if (words.date && *words.date != "today" && !is_day(*words.date))
        complaints.add(command_line_place(), "--date `" + *words.date + "` is no day",
                       "write it as 2026-01-31, or --date today");
    return words.date;
}

StudyRequest study_request(const Words& words, Complaints& complaints)
{
    return {.study = words.argument.value_or(""),
            .out = read_out(words, complaints),
            .step = read_step(words, complaints),
            .threads = read_threads(words, complaints),
            .json = words.json,
            .quiet = words.quiet};
}

} // namespace

Request check_request(const Words& words, Complaints& complaints)
{
    if (words.write_ies && !words.out)
        complaints.add(command_line_place(), "--write-ies has no folder to write to",
                       "add --out DIR");
    return CheckRequest{study_request(words, complaints), words.write_ies};
}

Request relief_request(const Words& words, Complaints& complaints)
{
    return ReliefRequest{study_request(words, complaints)};
}

Request compare_request(const Words& words, Complaints& complaints)
{
    return CompareRequest{study_request(words, complaints)};
}

Request report_request(const Words& words, Complaints& complaints)
{
    if (!words.out)
        complaints.add(command_line_place(), "`report` does not say where to write",
                       "name a new folder: --out DIR");
    return ReportRequest{.study = words.argument.value_or(""),
                         .out = read_out(words, complaints).value_or(""),
                         .step = read_step(words, complaints),
                         .date = read_date(words, complaints),
                         .threads = read_threads(words, complaints),
                         .quiet = words.quiet};
}

Request picture_request(const Words& words, Complaints& complaints)
{
    return PictureRequest{.study = words.argument.value_or(""),
                          .toward = read_toward(words, complaints),
                          .lamp = words.lamp,
                          .far_side = words.far_side,
                          .out = read_out(words, complaints),
                          .threads = read_threads(words, complaints)};
}

Request add_lamp_request(const Words& words, Complaints& complaints)
{
    return AddLampRequest{study_request(words, complaints)};
}

Request move_lamp_request(const Words& words, Complaints& complaints)
{
    return MoveLampRequest{study_request(words, complaints)};
}

Request tolerances_request(const Words& words, Complaints& complaints)
{
    return TolerancesRequest{study_request(words, complaints)};
}

Request margins_request(const Words& words, Complaints& complaints)
{
    return MarginsRequest{study_request(words, complaints), read_reach(words, complaints)};
}

Request states_request(const Words& words, Complaints& complaints)
{
    return StatesRequest{study_request(words, complaints)};
}

Request keep_clear_request(const Words& words, Complaints& complaints)
{
    return KeepClearRequest{study_request(words, complaints)};
}

Request sight_lines_request(const Words& words, Complaints& complaints)
{
    return SightLinesRequest{.sketch = words.argument.value_or(""),
                             .out = read_out(words, complaints),
                             .threads = read_threads(words, complaints),
                             .json = words.json};
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
