#include "input/ies_header.h"

#include "input/photometric_text.h"
#include "model/nearest_word.h"

#include <algorithm>

namespace glim {

namespace {

constexpr std::string_view tilt_word = "TILT=";

std::string editions_remedy()
{
    std::vector<std::string> lines;
    for (const IesEditionRow& row : ies_editions)
        if (!row.first_line.empty())
            lines.emplace_back(row.first_line);
    return "the first line is " + listed(lines, "or") + "; files of 1986 have none";
}

/// `TILT = NONE` and small letters are met too.
std::optional<std::string_view> after_tilt(std::string_view line)
{
    std::size_t at = 0;
    for (const char letter : tilt_word) {
        while (at < line.size() && line[at] == ' ' && at > 0)
            ++at;
        const char c = at < line.size() ? line[at] : '\0';
        if (c != letter && c != letter - 'A' + 'a')
            return std::nullopt;
        ++at;
    }
    return line.substr(std::min(line.find_first_not_of(" \t", at), line.size()));
}

bool same_in_capitals(std::string_view text, std::string_view capitals)
{
    return std::equal(text.begin(), text.end(), capitals.begin(), capitals.end(),
                      [](char a, char b) { return a == b || (a >= 'a' && a - 'a' + 'A' == b); });
}

class HeaderReader {
public:
    explicit HeaderReader(PhotometricText& file) : file_(file), scanner_(file.text()) {}

    IesHeader read()
    {
        read_first_lines();
        while (!scanner_.at_end()) {
            const std::string_view line = next_line();
            if (const auto tilt = after_tilt(line)) {
                read_tilt(line, *tilt);
                warn_of_missing_keywords(line);
                header_.numbers = rest_of_text(line);
                return std::move(header_);
            }
            read_line(line);
        }
        file_.refuse("there is no line TILT=, which stands before the numbers",
                     "if this is an LM-63 file, copy or export it again");
    }

private:
    std::string_view next_line()
    {
        const std::string_view line = scanner_.rest();
        scanner_.end_line();
        return line;
    }

    void read_first_lines()
    {
        header_.edition = &ies_editions[0];
        TextScanner ahead = scanner_;
        const std::string_view first = ahead.rest();
        if (!looks_like_ies_edition(first))
            return;
        next_line();
        name_edition(first);
        ahead.end_line();
        if (const std::string_view second = ahead.rest(); looks_like_ies_edition(second)) {
            next_line();
            name_edition(second);
            file_.warn(second, "the first line stands here twice; the last one counts",
                       "remove the wrong one");
        }
    }

    void name_edition(std::string_view line)
    {
        const std::optional<NamedEdition> named = ies_edition_in(line);
        if (!named)
            file_.refuse(line, "`" + shown(line) + "` is no edition of LM-63 that is read",
                         editions_remedy());
        header_.edition = named->row;
        if (named->exactly)
            return;
        const std::string_view proper = named->row->first_line;
        file_.warn(line,
                   "the first line `" + shown(line) + "` is taken for " +
                       std::string(named->row->name),
                   proper.empty() ? "files of that edition have no such line"
                                  : "write it as `" + std::string(proper) + "`");
    }

    void read_line(std::string_view line)
    {
        if (line.empty())
            return;
        if (line.front() != '[')
            return read_free_line(line);
        const std::size_t close = line.find(']');
        if (close == std::string_view::npos)
            return file_.complain("keywords that do not close", line,
                                  "the keyword `" + shown(line) + "` has no `]`",
                                  "write a keyword as [TEST], then a blank and its text");
        const std::string_view key = line.substr(1, close - 1);
        const std::string_view text = line.substr(close + 1);
        if (!text.empty() && text.front() != ' ' && text.front() != '\t')
            file_.warn(text, "there is no blank between a keyword and its text", "put one there");
        const std::size_t start = std::min(text.find_first_not_of(" \t"), text.size());
        header_.notes.push_back({note_text(key), note_text(text.substr(start))});
    }

    void read_free_line(std::string_view line)
    {
        if (header_.edition->edition != IesEdition::of_1986)
            file_.warn(line, "this line has no keyword; it is kept as a note",
                       "begin it with one, such as [OTHER] or [MORE]");
        header_.notes.push_back({"", note_text(line)});
    }

    void read_tilt(std::string_view line, std::string_view value)
    {
        if (value.empty())
            file_.refuse(line, "TILT= says nothing",
                         "write TILT=NONE, TILT=INCLUDE or TILT= and the name of a file");
        if (same_in_capitals(value, "NONE"))
            return;
        header_.tilt = same_in_capitals(value, "INCLUDE") ? IesTilt::included : IesTilt::in_file;
        header_.tilt_file = value;
    }

    /// They tell people where a measurement comes from; no number hangs on them.
    void warn_of_missing_keywords(std::string_view tilt_line)
    {
        std::vector<std::string> missing;
        for (const std::string_view keyword : header_.edition->keywords)
            if (!keyword.empty() && std::none_of(header_.notes.begin(), header_.notes.end(),
                                                 [&](const PhotometryNote& note) {
                                                     return same_in_capitals(note.label, keyword);
                                                 }))
                missing.push_back("[" + std::string(keyword) + "]");
        if (!missing.empty())
            file_.warn(tilt_line,
                       std::string(header_.edition->name) + " demands " + listed(missing) +
                           ", which this file does not have",
                       "ask the supplier which measurement this is, and add what is missing");
    }

    std::string_view rest_of_text(std::string_view line) const
    {
        const std::string_view text = file_.text();
        return text.substr(static_cast<std::size_t>(line.data() + line.size() - text.data()));
    }

    PhotometricText& file_;
    TextScanner scanner_;
    IesHeader header_;
};

} // namespace

IesHeader read_ies_header(PhotometricText& file) { return HeaderReader(file).read(); }

} // namespace glim
