#pragma once

#include "geometry/vector.h"

#include <algorithm>
#include <cstdint>
#include <limits>
#include <vector>

namespace glim {

/// A closed rectangle of the view plane; empty until something is added.
struct ViewWindow {
    Point2 least = Point2::Constant(std::numeric_limits<double>::infinity());
    Point2 most = Point2::Constant(-std::numeric_limits<double>::infinity());

    void add(const Point2& p)
    {
        least = least.cwiseMin(p);
        most = most.cwiseMax(p);
    }
    bool meets(const ViewWindow& other) const
    {
        return (least.array() <= other.most.array()).all() &&
               (other.least.array() <= most.array()).all();
    }
};

/// Things sorted into squares of the view plane, to be found by window.
class ViewSquares {
public:
    /// `expected` things over the window; what lies outside it is filed along its sides.
    ViewSquares(const ViewWindow& over, std::size_t expected);

    /// Things are numbered as they come, from 0.
    void add(const ViewWindow& thing);

    /// Who asks: remembers what was found, so that asking costs no memory.
    struct Asker {
        std::vector<std::uint32_t> asked_for; ///< by thing: the question it was last found for
        std::uint32_t question = 0;
        std::vector<std::uint32_t> found;
    };
    /// The things whose windows meet `w`, each once, in an order that the things alone decide.
    /// They are the asker's until it asks again.
    const std::vector<std::uint32_t>& near(const ViewWindow& w, Asker& asker) const;

private:
    template <class Act>
    void for_each_square(const ViewWindow& w, const Act& act) const;
    std::size_t place(double x, double least, double most) const;

    ViewWindow over_;
    std::size_t per_side_;
    std::vector<ViewWindow> things_;
    std::vector<std::vector<std::uint32_t>> squares_;
};

} // namespace glim
