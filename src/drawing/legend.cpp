#include "drawing/legend.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double sample_width = 18, sample_height = 9;
constexpr double to_words = 5; ///< from a sample to its words
constexpr double to_next = 16; ///< from an entry to the next one in its line
constexpr int most_lines = 3;  ///< of an entry's words; longer ones end in an ellipsis
constexpr double line_gap = 3; ///< between lines

Text text_of(const LegendEntry& entry, double width)
{
    Text text{.words = entry.words, .size = chart_text_size};
    if (extent_of(text).width > width) {
        text.width = width;
        text.most_lines = most_lines;
    }
    return text;
}

} // namespace

Legend::Legend(std::vector<LegendEntry> entries, double width)
{
    const double before_words = sample_width + to_words;
    double x = 0, y = 0;
    for (LegendEntry& entry : entries) {
        const Extent words = extent_of(text_of(entry, width - before_words));
        if (x > 0 && x + before_words + words.width > width) {
            x = 0;
            y = height_ + line_gap;
        }
        placed_.push_back({std::move(entry), {x, y, before_words + words.width, words.height}});
        x += placed_.back().rect.width + to_next;
        height_ = std::max(height_, placed_.back().rect.bottom());
    }
}

void Legend::draw(Canvas& canvas, const Point2& at) const
{
    for (const Placed& p : placed_) {
        const double x = at.x() + p.rect.x, y = at.y() + p.rect.y;
        p.entry.draw(canvas, {x, y + 0.5, sample_width, sample_height});
        const double before_words = sample_width + to_words;
        canvas.text({x + before_words, y}, text_of(p.entry, p.rect.width - before_words + 0.1));
    }
}

} // namespace glim
