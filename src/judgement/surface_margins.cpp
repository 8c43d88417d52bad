#include "judgement/surface_margins.h"

#include "geometry/normal_offset.h"
#include "judgement/quick_check.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace glim {

namespace {

/// Shares of the reach at which the outcome is looked at, outward.
constexpr std::array steps_outward = {1.0 / 16, 1.0 / 8, 1.0 / 4, 1.0 / 2, 1.0};
/// A glance: so coarse, to this, and by no more than this off where the outcome changes; beyond it
/// a close look begins anew.
constexpr Angle glance_step = degrees(15);
constexpr double glance_mm = 0.2;
constexpr double glance_doubt_mm = 0.3;
/// Areas are told about as drawn from so far to either side; mm.
constexpr double slope_mm = 0.25;
/// A margin that changes by less than this was not touched; mm2.
constexpr double idle_mm2 = 1e-6;

bool has_reliable_figures(Outcome outcome)
{
    return outcome == Outcome::met || outcome == Outcome::not_met;
}

Study with_exact_meshes(Study study)
{
    for (Surface& surface : study.surfaces)
        surface.chord.error = Length();
    return study;
}

/// Whether the study's surface may stand in a lamp's way.
bool blocks(const Surface& surface)
{
    return surface.role == Role::opaque || surface.role == Role::reflex;
}

/// One surface moved one way, looked at again and again.
class MovedSurface {
public:
    MovedSurface(Session& session, SurfaceId surface, const MarginsWanted& wanted,
                 const Workers& workers)
        : session_(session), surface_(surface), wanted_(wanted), workers_(workers),
          offsets_(normal_offsets(mesh()))
    {
    }
    ~MovedSurface() { put_back(); }
    MovedSurface(const MovedSurface&) = delete;
    MovedSurface& operator=(const MovedSurface&) = delete;

    SurfaceId surface() const { return surface_; }

    void choose(MarginWay way)
    {
        put_back();
        way_ = way;
        known_.clear();
        glanced_.clear();
    }

    /// Of every check, with the surface moved by so many mm: sampled on a coarse grid.
    const std::vector<QuickMargin>& glance(double mm)
    {
        return look(mm, {std::max(wanted_.step, glance_step), false}, glanced_);
    }
    /// The same as promised: on the grid asked for, exactly where it hangs in the balance.
    const std::vector<QuickMargin>& at(double mm) { return look(mm, {wanted_.step, true}, known_); }

private:
    using Known = std::map<double, std::vector<QuickMargin>>;

    const std::vector<QuickMargin>& look(double mm, const QuickLook& how, Known& known)
    {
        const auto found = known.find(mm);
        if (found != known.end())
            return found->second;
        move(mm);
        return known.emplace(mm, quick_margins(session_, wanted_.checks, how, workers_))
            .first->second;
    }

    const TriangleMesh& mesh() const { return session_.study().surfaces[surface_].mesh; }

    void move(double mm)
    {
        if (way_ == MarginWay::normal)
            session_.replace(surface_, offset_by(mesh(), offsets_, millimetres(mm)));
        else
            session_.place(surface_, Placement::shift(mm * way_vector()));
    }

    void put_back()
    {
        if (way_ == MarginWay::normal)
            session_.replace(surface_, mesh());
        else
            session_.place(surface_, Placement());
    }

    Vector way_vector() const
    {
        const Vehicle& vehicle = session_.study().vehicle;
        if (way_ == MarginWay::forward)
            return vehicle.forward.vector();
        if (way_ == MarginWay::up)
            return vehicle.up.vector();
        const bool on_right = vehicle.lateral(box_of(mesh()).centre()) < Length();
        return vehicle.outboard(on_right ? Side::right : Side::left).vector();
    }

    Session& session_;
    SurfaceId surface_;
    const MarginsWanted& wanted_;
    const Workers& workers_;
    std::vector<Vector> offsets_;
    MarginWay way_ = MarginWay::forward;
    Known known_, glanced_;
};

/// Where the outcome of a check changes between two moves, and how long the way between is.
struct Change {
    double from, to;
};

/// The first move with one sign at which one check changes its outcome.
class ChangeFinder {
public:
    ChangeFinder(MovedSurface& moved, std::size_t check, bool met_as_drawn)
        : moved_(moved), check_(check), met_(met_as_drawn)
    {
    }

    /// None within reach, which has the sign.
    std::optional<Length> first(double reach)
    {
        const std::optional<Change> glanced = first_glanced(reach);
        if (!glanced && !changed(reach))
            return std::nullopt;
        Change change = glanced ? about(*glanced, reach) : Change{0, reach};
        while (std::abs(change.to - change.from) > in_mm(margin_accuracy))
            halve(change, [&](double mm) { return changed(mm); });
        return changed(change.to) ? std::optional(millimetres(std::abs(change.to))) : std::nullopt;
    }

private:
    bool changed(double mm) { return (moved_.at(mm)[check_].outcome == Outcome::met) != met_; }
    bool glanced_changed(double mm)
    {
        return (moved_.glance(mm)[check_].outcome == Outcome::met) != met_;
    }

    template <class Changed>
    static void halve(Change& change, const Changed& changed)
    {
        const double middle = (change.from + change.to) / 2;
        (changed(middle) ? change.to : change.from) = middle;
    }

    std::optional<Change> first_glanced(double reach)
    {
        double from = 0;
        for (const double share : steps_outward) {
            Change change{from, share * reach};
            if (glanced_changed(change.to)) {
                while (std::abs(change.to - change.from) > glance_mm)
                    halve(change, [&](double mm) { return glanced_changed(mm); });
                return change;
            }
            from = change.to;
        }
        return std::nullopt;
    }

    /// A way about a glanced change at whose ends a close look finds the outcomes of before and
    /// after.
    Change about(const Change& glanced, double reach)
    {
        const double wide = std::copysign(glance_doubt_mm, reach);
        Change change{glanced.from - wide, glanced.to + wide};
        if (change.from / reach <= 0 || changed(change.from))
            change.from = 0;
        if (change.to / reach >= 1 || !changed(change.to))
            change.to = reach;
        return change;
    }

    MovedSurface& moved_;
    std::size_t check_;
    bool met_;
};

/// Whether moves change the margin of a check at all, at a glance.
bool touches(MovedSurface& moved, const std::vector<CheckMargins>& checks, double reach)
{
    const std::vector<QuickMargin> drawn = moved.glance(0);
    for (const double mm :
         {reach, -reach, reach * steps_outward.front(), -reach * steps_outward.front()})
        for (std::size_t c = 0; c < checks.size(); ++c) {
            const QuickMargin& there = moved.glance(mm)[c];
            if (there.outcome != drawn[c].outcome ||
                std::abs(in_mm2(there.margin - drawn[c].margin)) > idle_mm2)
                return true;
        }
    return false;
}

SurfaceMargin margin_of(MovedSurface& moved, MarginWay way, const MarginFindings& found,
                        std::size_t place)
{
    SurfaceMargin margin{moved.surface(), way, {}, {}, 0};
    const double reach = in_mm(found.wanted.reach);
    ChangeFinder finder(moved, place, found.checks[place].met);
    margin.along = finder.first(reach);
    margin.against = finder.first(-reach);
    margin.gain_mm = in_mm2(moved.at(slope_mm)[place].margin - moved.at(-slope_mm)[place].margin) /
                     (2 * slope_mm);
    return margin;
}

/// Adds what one surface has. False where it moves no margin.
bool add_margins_of(MovedSurface& moved, MarginFindings& found)
{
    bool any = false;
    for (const MarginWayWord& word : margin_way_words) {
        moved.choose(word.way);
        if (!touches(moved, found.checks, in_mm(found.wanted.reach)))
            continue;
        any = true;
        for (std::size_t c = 0; c < found.checks.size(); ++c)
            if (found.checks[c].left_out.empty())
                found.checks[c].margins.push_back(margin_of(moved, word.way, found, c));
    }
    return any;
}

CheckMargins as_drawn(std::size_t check, const QuickMargin& drawn)
{
    CheckMargins margins{check, drawn.outcome == Outcome::met, drawn.margin, {}, {}};
    if (!has_reliable_figures(drawn.outcome))
        margins.left_out = "it is neither met nor not met as drawn";
    return margins;
}

} // namespace

MarginFindings surface_margins(const Study& study, const MarginsWanted& wanted,
                               const Workers& workers)
{
    Session session(with_exact_meshes(study));
    MarginFindings found{wanted, {}, {}};
    const std::vector<QuickMargin> drawn =
        quick_margins(session, wanted.checks, {wanted.step, true}, workers);
    for (std::size_t c = 0; c < wanted.checks.size(); ++c)
        found.checks.push_back(as_drawn(wanted.checks[c], drawn[c]));

    std::vector<SurfaceId> movable = study.surfaces.ids();
    std::erase_if(movable, [&](SurfaceId s) { return !blocks(study.surfaces[s]); });
    for (std::size_t i = 0; i < movable.size(); ++i) {
        MovedSurface moved(session, movable[i], wanted, workers);
        if (!add_margins_of(moved, found))
            found.idle.push_back(movable[i]);
        if (workers.progress)
            workers.progress(i + 1, movable.size());
    }
    return found;
}

} // namespace glim
