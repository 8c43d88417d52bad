#pragma once

#include "drawing/figure.h"

#include <string>
#include <variant>
#include <vector>

namespace glim {

// What a report says, block by block and without a layout: a page for browsers and a PDF are made
// of the same document, so that they say the same.

/// How a word is meant. It is told by weight and colour, and what it says must do without either.
enum class Tone { plain, met, not_met, open };

struct Heading {
    int level = 1; ///< 1 a chapter, 2 a part of it, 3 a part of that
    std::string text;
};

struct Paragraph {
    std::string text;
    Tone tone = Tone::plain;
    bool is_lead = false; ///< larger: the sentence that a hurried reader takes along
};

struct BulletList {
    std::vector<std::string> items;
};

struct Term {
    std::string label;
    std::vector<std::string> lines; ///< a paragraph each
};

/// Labels and what belongs to each, in two columns.
struct Terms {
    std::vector<Term> terms;
};

struct TableCell {
    std::string text;
    Tone tone = Tone::plain;
};

/// What a column holds.
enum class ColumnKind {
    words,
    figures, ///< one below the other at their right ends; they break at no blank
    code ///< as it stands, in one line or, where it is long, in two: directions in figures, digests
};

struct TableColumn {
    std::string title;
    ColumnKind kind = ColumnKind::words;
};

/// The first cell of a row is its header. Requires: rows as long as `columns`.
struct Table {
    std::string caption;
    std::vector<TableColumn> columns;
    std::vector<std::vector<TableCell>> rows;
};

/// Its title and what it shows; a caption that begins with the title does not get it twice.
std::string caption_of(const Figure& figure);

/// Side by side where there is room.
struct Figures {
    std::vector<Figure> figures;
};

/// Stands out in a frame.
struct Notice {
    std::string text;
};

struct PageBreak {};

using Block =
    std::variant<Heading, Paragraph, BulletList, Terms, Table, Figures, Notice, PageBreak>;

/// Puts `more` behind the blocks.
void append(std::vector<Block>& blocks, std::vector<Block> more);

struct Document {
    std::string title;
    std::string date; ///< "2026-01-02"; empty: the document bears none
    std::vector<Block> blocks;
    /// One page to be pinned up: it lies across, and all is set as small as that takes.
    bool is_sheet = false;
};

} // namespace glim
