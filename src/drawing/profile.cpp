#include "drawing/profile.h"

#include "words/look_words.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

std::size_t nearest(const std::vector<Angle>& lines, Angle to)
{
    const auto off = [&](Angle a) { return std::abs(in_degrees(a - to)); };
    const auto found = std::min_element(lines.begin(), lines.end(),
                                        [&](Angle a, Angle b) { return off(a) < off(b); });
    return static_cast<std::size_t>(found - lines.begin());
}

/// Walks along one line of the grid.
class Walk {
public:
    Walk(const ChartSubject& subject, const LampLook& look, bool along_h, int line)
        : s_(subject), look_(look), along_h_(along_h), line_(line)
    {
    }

    Profile profile() const
    {
        Profile p;
        p.along_h = along_h_;
        p.at = along_h_ ? grid().bearing(line_, 0).v : grid().bearing(0, line_).h;
        p.holds_worst = (along_h_ ? s_.worst.v : s_.worst.h) == p.at;
        for (int i = 0; i + 1 < count(); ++i) {
            if (!joined(i))
                continue;
            if (i == 0 || !joined(i - 1))
                p.stretches.push_back({point(i)});
            p.stretches.back().push_back(point(i + 1));
        }
        for (const auto& stretch : p.stretches)
            add_not_met(p, stretch);
        return p;
    }

private:
    const FieldGrid& grid() const { return s_.figures.grid; }
    int count() const { return along_h_ ? grid().h_lines() : grid().v_lines(); }
    /// Whether the next node is there and both have figures.
    bool joined(int i) const
    {
        const bool neighbours =
            along_h_ ? grid().joined_along_h(line_, i) : grid().joined_along_v(i, line_);
        return neighbours && is_known(i) && is_known(i + 1);
    }
    bool is_known(int i) const
    {
        return !std::isnan(
            s_.figures.values[*grid().node(along_h_ ? line_ : i, along_h_ ? i : line_)]);
    }

    ProfilePoint point(int i) const
    {
        const int v = along_h_ ? line_ : i, h = along_h_ ? i : line_;
        const std::size_t node = *grid().node(v, h), at = s_.figures.at[node];
        const Bearing b = grid().bearing(v, h);
        ProfilePoint p;
        p.along = along_h_ ? b.h : b.v;
        p.figure = s_.figures.values[node];
        p.threshold = s_.limit.value_or(s_.figures.margins[node] + p.figure);
        if (s_.words().is_light)
            add_light(p, at);
        else
            add_errors(p, at);
        p.outcome = s_.figures.outcomes[node];
        return p;
    }

    void add_errors(ProfilePoint& p, std::size_t at) const
    {
        p.likely_error = in_mm2(uncertainty(look_, at));
        if (look_.seen[at].certified)
            p.proved = s_.of_area()
                           ? std::pair(in_mm2(look_.low(at)), in_mm2(look_.high(at)))
                           : std::pair(in_mm2(look_.hidden_low(at)), in_mm2(look_.hidden_high(at)));
        p.mesh_error = in_mm2(look_.mesh_error[at]);
    }

    /// The areas' errors as shares of the lamp's light; what is assumed of brightness is not in
    /// them.
    void add_light(ProfilePoint& p, std::size_t at) const
    {
        const std::optional<Intensity> whole = look_.light->toward[at].whole;
        if (s_.charted != Charted::light_left || !whole)
            return;
        p.whole = in_candelas(*whole);
        if (const Area approved = look_.approved(at);
            approved > Area() && look_.hidden_high(at) > Area()) {
            p.likely_error = *p.whole * (uncertainty(look_, at) / approved);
            p.mesh_error = *p.whole * (look_.mesh_error[at] / approved);
        }
    }

    /// Where between two neighbours "met" ends: where it is known, else where the margin is 0, else
    /// halfway.
    Angle passage(const ProfilePoint& a, const ProfilePoint& b, Angle at) const
    {
        for (const Bearing& known : s_.figures.passages) {
            const Angle along = along_h_ ? known.h : known.v;
            if ((along_h_ ? known.v : known.h) == at && a.along <= along && along <= b.along)
                return along;
        }
        const double over_a = a.figure - a.threshold, over_b = b.figure - b.threshold;
        const double share = over_a * over_b < 0 ? over_a / (over_a - over_b) : 0.5;
        return a.along + (b.along - a.along) * share;
    }

    Angle end_of(const ProfilePoint& a, const ProfilePoint& b, Angle at) const
    {
        const bool one_is_met = a.outcome == Outcome::met || b.outcome == Outcome::met;
        return one_is_met ? passage(a, b, at) : (a.along + b.along) / 2;
    }

    void add_not_met(Profile& p, const std::vector<ProfilePoint>& stretch) const
    {
        Angle from = stretch.front().along;
        for (std::size_t i = 0; i < stretch.size(); ++i) {
            const bool last = i + 1 == stretch.size();
            if (!last && stretch[i + 1].outcome == stretch[i].outcome)
                continue;
            const Angle to = last ? stretch[i].along : end_of(stretch[i], stretch[i + 1], p.at);
            if (stretch[i].outcome != Outcome::met)
                p.not_met.push_back({stretch[i].outcome, from, to});
            from = to;
        }
    }

    const ChartSubject& s_;
    const LampLook& look_;
    bool along_h_;
    int line_;
};

} // namespace

Profile profile_along_h(const ChartSubject& subject, const LampLook& look, Angle v)
{
    const auto line = static_cast<int>(nearest(subject.figures.grid.vs(), v));
    return Walk(subject, look, true, line).profile();
}

Profile profile_along_v(const ChartSubject& subject, const LampLook& look, Angle h)
{
    const auto line = static_cast<int>(nearest(subject.figures.grid.hs(), h));
    return Walk(subject, look, false, line).profile();
}

} // namespace glim
