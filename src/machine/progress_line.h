#pragma once

#include "machine/workers.h"

#include <string>
#include <string_view>

namespace glim {

/// `seeing indicator: 1200 of 3906 directions`, cut to fit one line of `columns` characters and
/// never within a character of UTF-8.
std::string progress_words(std::string_view doing, std::size_t done, std::size_t all,
                           std::string_view pieces, int columns);

/// `, about 40 s left`, `, about 3 min left`, if the rest goes as quickly as what was done in so
/// many seconds; empty where it is too early to tell.
std::string time_left_words(double seconds, std::size_t done, std::size_t all);

/// One line on standard error that tells how far long work is, and after a few seconds how long it
/// may still take. It changes at most ten times a
/// second, shows only where may_show_progress() says so, and is erased at the end, so that what
/// stays on the terminal is the result alone.
///
///     ProgressLine line;
///     workers.progress = line.telling("seeing indicator", "directions");
class ProgressLine {
public:
    ProgressLine();
    /// For those who know better, as `--quiet` does: `shown` decides.
    explicit ProgressLine(bool shown);
    ~ProgressLine();
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    /// What to call while `doing` goes on with its `pieces`; empty if nothing is shown. The line
    /// must outlive it, and one thread at a time may call it, as for_each_index does.
    Progress telling(std::string doing, std::string pieces);

    /// Clears the line, so that something else can be printed; the next call shows it again.
    void erase();

private:
    bool shown_;
    bool there_ = false;
    long long next_ms_ = 0; ///< on the steady clock; no change before it
    void show(std::string_view words);
};

} // namespace glim
