#pragma once

namespace glim {

enum class Stream { output, error };

/// What the environment says about how terminals are to be used.
struct TerminalWishes {
    bool no_colour = false;  ///< NO_COLOR is set and not empty (the no-color.org convention)
    bool dumb = false;       ///< TERM is "dumb": no escape sequences at all
    bool unattended = false; ///< CI is set and not empty: nobody watches

    static TerminalWishes from_environment();
};

bool is_terminal(Stream stream);

/// How many characters fit on a line; 80 if the terminal does not say, or says 0 as some do.
int terminal_columns(Stream stream);

/// Colour only where somebody can see it and has not said no.
bool may_colour(Stream stream, const TerminalWishes& wishes = TerminalWishes::from_environment());

/// A line that changes on standard error: only where somebody watches a terminal that can erase.
bool may_show_progress(const TerminalWishes& wishes = TerminalWishes::from_environment());

} // namespace glim
