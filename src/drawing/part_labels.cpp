#include "drawing/part_labels.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>

namespace glim {

namespace {

/// Room is looked for on a coarse grid: squares of so many pixels.
constexpr int square = 4;

/// A grid of squares, and how many of them are marked in any rectangle: sums from the top left.
class MarkedSquares {
public:
    MarkedSquares(int columns, int rows, const std::function<bool(int, int)>& marked)
        : columns_(columns),
          sums_(static_cast<std::size_t>(columns + 1) * static_cast<std::size_t>(rows + 1))
    {
        for (int y = 0; y < rows; ++y)
            for (int x = 0; x < columns; ++x)
                sums_[place(x + 1, y + 1)] = (marked(x, y) ? 1 : 0) + sums_[place(x, y + 1)] +
                                             sums_[place(x + 1, y)] - sums_[place(x, y)];
    }

    /// In [x0, x1) by [y0, y1).
    int in(int x0, int y0, int x1, int y1) const
    {
        return sums_[place(x1, y1)] - sums_[place(x0, y1)] - sums_[place(x1, y0)] +
               sums_[place(x0, y0)];
    }

private:
    std::size_t place(int x, int y) const
    {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(columns_ + 1) +
               static_cast<std::size_t>(x);
    }

    int columns_;
    std::vector<int> sums_;
};

class LabelPlacer {
public:
    LabelPlacer(const BodyPicture& picture, const std::vector<bool>& free)
        : columns_(static_cast<int>(picture.frame.width) / square),
          rows_(static_cast<int>(picture.frame.height) / square)
    {
        for (int y = 0; y < rows_; ++y)
            for (int x = 0; x < columns_; ++x) {
                const std::size_t row =
                    static_cast<std::size_t>(y * square + square / 2) * samples_a_side;
                const std::size_t at =
                    row * picture.frame.width * samples_a_side +
                    static_cast<std::size_t>(x * square + square / 2) * samples_a_side;
                part_of_.push_back(free[at] ? picture.samples[at].part : NearestHit::nothing);
            }
    }

    std::size_t squares_of(std::uint32_t part) const
    {
        return static_cast<std::size_t>(std::count(part_of_.begin(), part_of_.end(), part));
    }

    /// The middle of a rectangle of so many pixels on the part, with the widest margin that there
    /// is around it; what it covers is taken from then on.
    std::optional<Point2> place(std::uint32_t part, const Extent& pixels)
    {
        const int width = static_cast<int>(std::ceil(pixels.width / square));
        const int height = static_cast<int>(std::ceil(pixels.height / square));
        const MarkedSquares marked(columns_, rows_,
                                   [&](int x, int y) { return part_of_[index(x, y)] == part; });
        std::optional<Point2> middle;
        int least = 0, beyond = std::min(columns_, rows_) / 2; // no margin is as wide as that
        std::pair<int, int> corner;
        while (least < beyond) {
            const int margin = (least + beyond) / 2;
            const auto found =
                nearest_to_middle(marked, width + 2 * margin, height + 2 * margin, part);
            if (!found) {
                beyond = margin;
                continue;
            }
            least = margin + 1;
            corner = {found->first + margin, found->second + margin};
            middle = Point2(corner.first + width / 2.0, corner.second + height / 2.0) * square;
        }
        if (middle)
            take(corner.first, corner.second, width, height);
        return middle;
    }

private:
    std::size_t index(int x, int y) const
    {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(columns_) +
               static_cast<std::size_t>(x);
    }

    /// The top left corner of a rectangle all on the part, the one nearest to the part's middle.
    std::optional<std::pair<int, int>> nearest_to_middle(const MarkedSquares& marked, int width,
                                                         int height, std::uint32_t part) const
    {
        std::optional<std::pair<int, int>> best;
        double least = 0;
        const Point2 middle = middle_of(part);
        for (int y = 0; y + height <= rows_; ++y)
            for (int x = 0; x + width <= columns_; ++x) {
                if (marked.in(x, y, x + width, y + height) < width * height)
                    continue;
                const double off =
                    (Point2(x + width / 2.0, y + height / 2.0) - middle).squaredNorm();
                if (!best || off < least) {
                    best = {x, y};
                    least = off;
                }
            }
        return best;
    }

    Point2 middle_of(std::uint32_t part) const
    {
        Point2 sum = Point2::Zero();
        double count = 0;
        for (int y = 0; y < rows_; ++y)
            for (int x = 0; x < columns_; ++x)
                if (part_of_[index(x, y)] == part) {
                    sum += Point2(x + 0.5, y + 0.5);
                    ++count;
                }
        return count > 0 ? Point2(sum / count) : sum;
    }

    void take(int left, int top, int width, int height)
    {
        for (int y = top; y < top + height; ++y)
            for (int x = left; x < left + width; ++x)
                part_of_[index(x, y)] = NearestHit::nothing;
    }

    int columns_, rows_;
    std::vector<std::uint32_t> part_of_; ///< one a square; `nothing` where no label may stand
};

} // namespace

std::vector<PartLabel> place_labels(const BodyPicture& picture, const std::vector<bool>& free,
                                    const std::vector<std::string>& names, double size,
                                    double pixels)
{
    constexpr double around = 3; // points
    LabelPlacer placer(picture, free);
    std::vector<PartLabel> labels;
    for (std::uint32_t part = 0; part < names.size(); ++part) {
        if (names[part].empty() || placer.squares_of(part) == 0)
            continue;
        const Extent text = extent_of({.words = names[part], .size = size});
        const auto centre = placer.place(
            part, {pixels * (text.width + 2 * around), pixels * (text.height + around)});
        if (centre)
            labels.push_back({part, names[part], *centre});
    }
    return labels;
}

} // namespace glim
