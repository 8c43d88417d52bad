#include "machine/progress_line.h"

#include "machine/terminal.h"
#include "machine/utf8.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <utility>

#include <unistd.h>

namespace glim {

namespace {

/// Faster than this nobody can read.
constexpr long long least_gap_ms = 100;

constexpr std::string_view to_line_start_and_clear = "\r\x1b[K";

long long now_ms()
{
    const auto since = std::chrono::steady_clock::now().time_since_epoch();
    return std::chrono::duration_cast<std::chrono::milliseconds>(since).count();
}

/// Straight to the terminal: whatever cannot be written is not missed.
void write_to_terminal(std::string_view text)
{
    [[maybe_unused]] const ssize_t written = write(STDERR_FILENO, text.data(), text.size());
}

/// The longest beginning of `text` with at most `most` characters of UTF-8.
std::string first_characters(const std::string& text, std::size_t most)
{
    std::size_t end = 0;
    std::size_t count = 0;
    while (end < text.size() && (continues_character(text[end]) || count < most))
        count += continues_character(text[end++]) ? 0 : 1;
    return text.substr(0, end);
}

} // namespace

std::string time_left_words(double seconds, std::size_t done, std::size_t all)
{
    constexpr double least_seconds = 3;
    constexpr double least_share = 0.03; // the first pieces tell little of those that follow
    if (seconds < least_seconds || done >= all ||
        static_cast<double>(done) < least_share * static_cast<double>(all))
        return "";
    const double left = seconds * static_cast<double>(all - done) / static_cast<double>(done);
    constexpr double minute = 60, most_in_seconds = 100, ten = 10;
    const long told =
        left > most_in_seconds ? std::lround(left / minute) : std::max(1L, std::lround(left));
    const bool round = told > 2 * ten && left <= most_in_seconds;
    return ", about " + std::to_string(round ? std::lround(told / ten) * 10 : told) +
           (left > most_in_seconds ? " min left" : " s left");
}

std::string progress_words(std::string_view doing, std::size_t done, std::size_t all,
                           std::string_view pieces, int columns)
{
    const std::string words = std::string(doing) + ": " + std::to_string(done) + " of " +
                              std::to_string(all) + " " + std::string(pieces);
    // The last column stays free: some terminals wrap as soon as it is filled.
    return first_characters(words, static_cast<std::size_t>(std::max(columns - 1, 0)));
}

ProgressLine::ProgressLine() : ProgressLine(may_show_progress()) {}

ProgressLine::ProgressLine(bool shown) : shown_(shown) {}

ProgressLine::~ProgressLine() { erase(); }

Progress ProgressLine::telling(std::string doing, std::string pieces)
{
    if (!shown_)
        return {};
    return [this, doing = std::move(doing), pieces = std::move(pieces),
            began = now_ms()](std::size_t done, std::size_t all) {
        const long long now = now_ms();
        if (now < next_ms_)
            return;
        next_ms_ = now + least_gap_ms;
        const std::string left =
            time_left_words(static_cast<double>(now - began) / 1000, done, all);
        show(progress_words(doing, done, all, pieces + left, terminal_columns(Stream::error)));
    };
}

void ProgressLine::show(std::string_view words)
{
    write_to_terminal(std::string(to_line_start_and_clear) + std::string(words));
    there_ = true;
}

void ProgressLine::erase()
{
    if (there_)
        write_to_terminal(to_line_start_and_clear);
    there_ = false;
}

} // namespace glim
