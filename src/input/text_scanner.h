#pragma once

#include "model/complaint.h"

#include <string>
#include <string_view>

namespace glim {

/// How a format writes its text.
struct TextRules {
    bool hash_begins_comment = false;   ///< a word that begins with # ends the line
    bool backslash_joins_lines = false; ///< as the last character of a line
};

/// Walks through a text line by line and word by word, without a copy. A line ends with LF, CR LF
/// or CR; words stand between spaces and tabs; a byte order mark at the beginning is skipped.
///
///     for (TextScanner scanner(text); !scanner.at_end(); scanner.end_line())
///         for (auto word = scanner.word(); !word.empty(); word = scanner.word())
///             use(word);
class TextScanner {
public:
    explicit TextScanner(std::string_view text, TextRules rules = {});

    /// The next word of the line. At the line's end an empty one, which still says where.
    std::string_view word();
    /// What is left of the line, without the blanks before and behind; `#` and `\` are text here.
    std::string_view rest();
    /// Goes to the beginning of the next line, over what is left of this one.
    void end_line();
    bool at_end() const { return next_ == end_; }

private:
    void skip_blanks();
    std::size_t joint() const;

    const char* next_;
    const char* end_;
    TextRules rules_;
};

/// Whether the first 1024 bytes hold no control character but blanks and line ends. Binary formats
/// have zeros in theirs.
bool looks_like_text(std::string_view bytes);

/// Where `part`, which lies in `text`, begins: lines and columns counted from 1, columns in
/// characters of UTF-8. Takes as long as to walk there, so it is for complaints only.
Place place_in(std::string_view text, const std::string& file, std::string_view part);

/// Whether the line of `part`, which lies in `text`, is the last and has no line end: so that what
/// it lacks may have been cut off.
bool is_on_unfinished_line(std::string_view text, std::string_view part);

/// A word of the user's file as a message may print it: cut after 40 bytes, and what is neither
/// printable ASCII nor UTF-8 written as \x00.
std::string shown(std::string_view word);

} // namespace glim
