#include "drawing/picture_rims.h"

#include "machine/stop.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// A surface that lies so many pixels off its neighbour's plane has jumped.
constexpr float jump_pixels = 1.5F;

/// A part's facets lie before each other where it is seen along its surface; only a fold as deep as
/// this share of the picture's width is worth a line.
constexpr float fold_share = 0.04F;

/// A strong line is so many samples wider to each side than a thin one.
constexpr int widened_by = 1;

class RimFinder {
public:
    RimFinder(const BodyPicture& picture, const std::vector<bool>& strong)
        : samples_(picture.samples), strong_(strong),
          columns_(static_cast<int>(picture.frame.width * samples_a_side)),
          rows_(static_cast<int>(picture.frame.height * samples_a_side)),
          step_(static_cast<float>(in_mm(picture.frame.pixel)) / samples_a_side),
          fold_(fold_share * step_ * static_cast<float>(columns_))
    {
    }

    int columns() const { return columns_; }
    int rows() const { return rows_; }

    /// Of a sample against its four neighbours.
    Rim at(int column, int row) const
    {
        Rim rim = Rim::none;
        for (const auto& [x, y] : {std::pair{1, 0}, {-1, 0}, {0, 1}, {0, -1}})
            if (is_inside(column + x, row + y))
                rim = std::max(
                    rim, between(sample(column, row), sample(column + x, row + y),
                                 {step_ * static_cast<float>(x), -step_ * static_cast<float>(y)}));
        return rim;
    }

    bool is_inside(int column, int row) const
    {
        return column >= 0 && row >= 0 && column < columns_ && row < rows_;
    }

private:
    const BodySample& sample(int column, int row) const
    {
        return samples_[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
                        static_cast<std::size_t>(column)];
    }

    /// `way` leads from a to b: to the right and up, mm.
    Rim between(const BodySample& a, const BodySample& b, const Eigen::Vector2f& way) const
    {
        if (!a.any() && !b.any())
            return Rim::none;
        if (a.any() != b.any())
            return of_silhouette(a.any() ? a : b);
        if (!jumps_between(a, b, way))
            return a.part == b.part ? Rim::none : Rim::thin;
        if (a.part == b.part && std::abs(a.depth - b.depth) < fold_)
            return Rim::none;
        return of_silhouette(a.depth > b.depth ? a : b);
    }

    Rim of_silhouette(const BodySample& nearer) const
    {
        return strong_[nearer.part] ? Rim::strong : Rim::thin;
    }

    bool jumps_between(const BodySample& a, const BodySample& b, const Eigen::Vector2f& way) const
    {
        const Eigen::Vector3f step(way.x(), way.y(), b.depth - a.depth);
        return std::min(std::abs(a.slant.dot(step)), std::abs(b.slant.dot(step))) >
               jump_pixels * samples_a_side * step_;
    }

    const std::vector<BodySample>& samples_;
    const std::vector<bool>& strong_;
    int columns_, rows_;
    float step_; ///< mm between samples
    float fold_; ///< mm
};

/// Strong lines, made wider.
Rim widened(const RimFinder& finder, const std::vector<Rim>& rims, int column, int row)
{
    const auto place = [&](int c, int r) {
        return static_cast<std::size_t>(r) * static_cast<std::size_t>(finder.columns()) +
               static_cast<std::size_t>(c);
    };
    for (int y = -widened_by; y <= widened_by; ++y)
        for (int x = -widened_by; x <= widened_by; ++x)
            if (finder.is_inside(column + x, row + y) &&
                rims[place(column + x, row + y)] == Rim::strong)
                return Rim::strong;
    return rims[place(column, row)];
}

template <class Work>
std::vector<Rim> by_rows(const RimFinder& finder, const Workers& workers, const Work& work)
{
    std::vector<Rim> rims(static_cast<std::size_t>(finder.rows()) *
                          static_cast<std::size_t>(finder.columns()));
    const bool whole = for_each_index(
        static_cast<std::size_t>(finder.rows()), workers.silent(), [&](std::size_t row, unsigned) {
            for (int column = 0; column < finder.columns(); ++column)
                rims[row * static_cast<std::size_t>(finder.columns()) +
                     static_cast<std::size_t>(column)] = work(column, static_cast<int>(row));
        });
    if (!whole)
        throw Stopped();
    return rims;
}

} // namespace

std::vector<Rim> rims_of(const BodyPicture& picture, const std::vector<bool>& strong,
                         const Workers& workers)
{
    const RimFinder finder(picture, strong);
    const std::vector<Rim> rims =
        by_rows(finder, workers, [&](int column, int row) { return finder.at(column, row); });
    return by_rows(finder, workers,
                   [&](int column, int row) { return widened(finder, rims, column, row); });
}

} // namespace glim
