#include "shapes/two_ways.h"

#include <charconv>
#include <cmath>

namespace glim::shapes {

namespace {

/// Products and sums in double of lengths up to some 4 m: 1e-12 mm, along edges of some 100 mm.
constexpr double double_grain_mm2 = 1e-9;

std::string words(Area area)
{
    std::array<char, 40> text;
    const auto end = std::to_chars(text.begin(), text.end(), in_mm2(area)).ptr;
    return std::string(text.begin(), end) + " mm2";
}

class Claims {
public:
    void expect_least(const char* name, Area value, Area least, Area margin)
    {
        if (!(value >= least - margin))
            broken_.push_back(std::string(name) + " is " + words(value) + ", below " +
                              words(least));
    }
    void expect_most(const char* name, Area value, Area most, Area margin)
    {
        if (!(value <= most + margin))
            broken_.push_back(std::string(name) + " is " + words(value) + ", above " + words(most));
    }
    std::vector<std::string> take_broken() { return std::move(broken_); }

private:
    std::vector<std::string> broken_;
};

} // namespace

Area Compared::difference() const
{
    return square_millimetres(std::abs(in_mm2(exact.visible - by_definition)));
}

TwoWays::TwoWays(Study study, const LampStanding& lamp)
    : study_(std::make_unique<Study>(std::move(study))), scene_(*study_),
      definition_(*study_, lamp), view_(scene_.view_of(lamp, study_->sampling)),
      exact_(scene_.exact_view_of(lamp, study_->sampling.touch))
{
}

Compared TwoWays::toward(const Direction& toward) const
{
    Compared c{.by_definition = definition_.visible(toward),
               .approved_by_definition = definition_.approved(toward),
               .exact = exact_.toward(toward),
               .seen = seen_toward(view_, toward),
               .broken = {}};
    Claims claims;
    const Area grain = square_millimetres(double_grain_mm2);
    claims.expect_most("the exact area", c.exact.visible, c.by_definition + c.exact.rounding,
                       grain);
    claims.expect_least("the exact area", c.exact.visible, c.by_definition - c.exact.rounding,
                        grain);
    c.broken = claims.take_broken();
    return c;
}

} // namespace glim::shapes
