#include "report/write_ies.h"

#include "words/numbers.h"

#include <cassert>

namespace glim {

namespace {

/// LM-63 allows 132 columns since 1995 (from memory, not verified); other programs read less.
constexpr std::size_t longest_line = 78;

constexpr double mm_per_metre = 1000;

std::string on_one_line(const std::string& text)
{
    std::string line;
    for (const char c : text)
        line += static_cast<unsigned char>(c) < 0x20 || c == '[' || c == ']' ? ' ' : c;
    return line;
}

std::string keyword(const std::string& label)
{
    std::string word = on_one_line(label);
    for (char& c : word)
        c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    return word.empty() ? "OTHER" : word;
}

/// Numbers with blanks between, in lines that are not too long.
class NumberLines {
public:
    void add(double value)
    {
        const std::string word = shortest(value + 0.0); // never -0
        if (!line_.empty() && line_.size() + 1 + word.size() > longest_line)
            end_line();
        line_ += (line_.empty() ? "" : " ") + word;
    }
    void end_line()
    {
        text_ += line_ + "\n";
        line_.clear();
    }
    const std::string& text() const { return text_; }

private:
    std::string line_;
    std::string text_;
};

void add_line(NumberLines& lines, const std::vector<Angle>& angles)
{
    for (const Angle a : angles)
        lines.add(in_degrees(a));
    lines.end_line();
}

} // namespace

std::string ies_text(const IntensityGrid& grid, const LitOpening& opening,
                     const std::vector<PhotometryNote>& notes, double watts)
{
    assert(grid.goniometer == Goniometer::a);
    std::string text = "IESNA:LM-63-2002\n";
    for (const PhotometryNote& note : notes)
        text += "[" + keyword(note.label) + "] " + on_one_line(note.text) + "\n";
    NumberLines lines;
    // One lamp, absolute, multiplier 1, the counts, type A, sizes in metres.
    for (const double value :
         {1.0, -1.0, 1.0, double(grid.vertical.size()), double(grid.horizontal.size()), 3.0, 2.0})
        lines.add(value);
    for (const Length size : {opening.width, opening.length, opening.height})
        lines.add(in_mm(size) / mm_per_metre);
    lines.end_line();
    // No ballast, and the reserved 1.
    for (const double value : {1.0, 1.0, watts})
        lines.add(value);
    lines.end_line();
    add_line(lines, grid.vertical);
    add_line(lines, grid.horizontal);
    for (std::size_t h = 0; h < grid.horizontal.size(); ++h) {
        for (std::size_t v = 0; v < grid.vertical.size(); ++v)
            lines.add(in_candelas(grid.at(h, v)));
        lines.end_line();
    }
    return text + "TILT=NONE\n" + lines.text();
}

} // namespace glim
