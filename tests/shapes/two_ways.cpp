#include "shapes/two_ways.h"

#include <charconv>
#include <cmath>

namespace glim::shapes {

namespace {

/// Products and sums in double of lengths up to some 4 m: 1e-12 mm, along edges of some 100 mm.
constexpr Area grain = square_millimetres(1e-9);

Workers one_worker() { return {.threads = 1, .stop = {}, .progress = {}}; }

std::string words(Area area)
{
    std::array<char, 40> text;
    const auto end = std::to_chars(text.begin(), text.end(), in_mm2(area)).ptr;
    return std::string(text.begin(), end) + " mm2";
}

class Claims {
public:
    /// Closed at both ends, but for the grain.
    void expect_within(const char* name, Area value, Area least, Area most)
    {
        if (!(value >= least - grain && value <= most + grain))
            broken_.push_back(std::string(name) + " is " + words(value) + ", not within " +
                              words(least) + " and " + words(most));
    }
    void expect(bool holds, const char* claim)
    {
        if (!holds)
            broken_.push_back(std::string("it does not hold that ") + claim);
    }
    void add_to(std::vector<std::string>& broken) const
    {
        broken.insert(broken.end(), broken_.begin(), broken_.end());
    }

private:
    std::vector<std::string> broken_;
};

void expect_exact(const Compared& c, std::vector<std::string>& broken)
{
    Claims claims;
    claims.expect_within("the exact area", c.exact.visible, c.by_definition - c.exact.rounding,
                         c.by_definition + c.exact.rounding);
    claims.expect_within("the exact hidden area", c.exact_hidden.hidden,
                         c.hidden_by_definition - c.exact_hidden.rounding,
                         c.hidden_by_definition + c.exact_hidden.rounding);
    claims.add_to(broken);
}

void expect_bounds(const Compared& c, std::vector<std::string>& broken)
{
    Claims claims;
    claims.expect(c.seen.certified, "the bounds are certified");
    claims.expect_within("the area by definition", c.by_definition, c.seen.low, c.seen.high);
    claims.expect_within("the hidden area by definition", c.hidden_by_definition, c.seen.hidden_low,
                         c.seen.hidden_high);
    claims.expect_within("the sampled area", c.seen.visible, c.seen.low, c.seen.high);
    claims.add_to(broken);
}

} // namespace

Area Compared::difference() const
{
    return square_millimetres(std::abs(in_mm2(exact.visible - by_definition)));
}

TwoWays::TwoWays(Study study, const LampStanding& lamp, std::span<const Direction> directions)
    : study_(std::make_unique<Study>(std::move(study))), scene_(*study_),
      definition_(*study_, lamp), view_(scene_.view_of(lamp, study_->sampling)),
      certificate_(scene_.certificate_of(lamp, view_, directions, one_worker())),
      exact_(scene_.exact_view_of(lamp, study_->sampling.touch))
{
}

Compared TwoWays::toward(const Direction& toward) const
{
    const Area by_definition = definition_.visible(toward);
    Compared c{.by_definition = by_definition,
               .hidden_by_definition = definition_.approved(toward) - by_definition,
               .exact = exact_.toward(toward),
               .exact_hidden = exact_.hidden_toward(toward),
               .seen = seen_toward(view_, toward, &certificate_),
               .broken = {}};
    expect_exact(c, c.broken);
    expect_bounds(c, c.broken);
    return c;
}

} // namespace glim::shapes
