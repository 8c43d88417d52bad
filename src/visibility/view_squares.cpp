#include "visibility/view_squares.h"

#include <cmath>

namespace glim {

namespace {

/// More squares than this cost more to clear than they save.
constexpr std::size_t most_per_side = 256;

} // namespace

ViewSquares::ViewSquares(const ViewWindow& over, std::size_t expected)
    : over_(over), per_side_(std::clamp<std::size_t>(
                       static_cast<std::size_t>(std::sqrt(double(expected))), 1, most_per_side)),
      squares_(per_side_ * per_side_)
{
    things_.reserve(expected);
}

void ViewSquares::add(const ViewWindow& thing)
{
    const auto number = static_cast<std::uint32_t>(things_.size());
    things_.push_back(thing);
    for_each_square(thing, [&](std::size_t square) { squares_[square].push_back(number); });
}

const std::vector<std::uint32_t>& ViewSquares::near(const ViewWindow& w, Asker& asker) const
{
    asker.asked_for.resize(things_.size());
    asker.found.clear();
    ++asker.question;
    for_each_square(w, [&](std::size_t square) {
        for (const std::uint32_t thing : squares_[square]) {
            if (asker.asked_for[thing] == asker.question || !things_[thing].meets(w))
                continue;
            asker.asked_for[thing] = asker.question;
            asker.found.push_back(thing);
        }
    });
    return asker.found;
}

std::size_t ViewSquares::place(double x, double least, double most) const
{
    const double share = most > least ? (x - least) / (most - least) : 0;
    return static_cast<std::size_t>(
        std::clamp(share * double(per_side_), 0.0, double(per_side_ - 1)));
}

template <class Act>
void ViewSquares::for_each_square(const ViewWindow& w, const Act& act) const
{
    const std::size_t x1 = place(w.most.x(), over_.least.x(), over_.most.x());
    const std::size_t y1 = place(w.most.y(), over_.least.y(), over_.most.y());
    for (std::size_t y = place(w.least.y(), over_.least.y(), over_.most.y()); y <= y1; ++y)
        for (std::size_t x = place(w.least.x(), over_.least.x(), over_.most.x()); x <= x1; ++x)
            act(y * per_side_ + x);
}

} // namespace glim
