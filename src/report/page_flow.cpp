#include "report/page_flow.h"

namespace glim {

namespace {

/// What heights added up in another order may differ by.
constexpr double grain = 1e-6;

class Flow {
public:
    Flow(const std::vector<Piece>& pieces, double height) : pieces_(pieces), height_(height) {}

    std::vector<PagePieces> pages()
    {
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            if (needs_page(i))
                pages_.emplace_back();
            place(pieces_[i]);
        }
        return std::move(pages_);
    }

private:
    bool at_top() const { return pages_.empty() || pages_.back().empty(); }

    double used() const
    {
        return at_top() ? 0 : pages_.back().back().y + pages_.back().back().piece->height;
    }

    /// Of the pieces from `i` on that stay together.
    double height_together(std::size_t i) const
    {
        double height = pieces_[i].height;
        for (; pieces_[i].keep_with_next && i + 1 < pieces_.size(); ++i)
            height += pieces_[i + 1].above + pieces_[i + 1].height;
        return height;
    }

    bool needs_page(std::size_t i) const
    {
        if (pages_.empty())
            return true;
        if (at_top())
            return false;
        const Piece& piece = pieces_[i];
        if (piece.begins_page)
            return true;
        const double room = height_ - used() - piece.above + grain;
        const double together = height_together(i);
        return piece.height > room || (together > room && together <= height_ + grain);
    }

    void place(const Piece& piece)
    {
        if (at_top() && piece.repeated)
            pages_.back().push_back({piece.repeated.get(), 0});
        const double above = at_top() ? 0 : piece.above;
        pages_.back().push_back({&piece, used() + above});
    }

    const std::vector<Piece>& pieces_;
    double height_;
    std::vector<PagePieces> pages_;
};

} // namespace

std::vector<PagePieces> flowed(const std::vector<Piece>& pieces, double height)
{
    return Flow(pieces, height).pages();
}

} // namespace glim
