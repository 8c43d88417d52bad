#pragma once

#include "judgement/findings.h"
#include "machine/workers.h"

namespace glim {

// How shallow a relief of the reshapeable surfaces lets the lamps be seen as the checks ask. Depths
// are measured along each surface's push; places are in the vehicle frame.

/// A direction in which too little is seen, and how deep a relief has to be for it alone.
struct ReliefSight {
    std::size_t check = 0; ///< place in Study::checks: the first that asks for it
    std::string row;       ///< the row's id
    std::size_t look = 0;  ///< place in Findings::looks
    Bearing toward;
    Area seen;   ///< before; as sampled
    Area needed; ///< with what the wish wants to spare
    Area most;   ///< to be seen if nothing that may be reshaped were in the way
    /// The least depth that frees enough. None where fixed parts leave too little.
    std::optional<Length> depth;
};

/// The deepest point of a relief, whatever its shape, is no shallower than this: the largest depth
/// that any direction asks for.
struct LeastDepth {
    Length depth;
    /// The same, where so much more is asked for that the verdicts are sure whatever the meshes may
    /// be off: what the relief keeps to. Not less than `depth`.
    Length for_sure;
    std::size_t sight = 0;       ///< place in Relief::sights
    std::string surface;         ///< which has to be that deep
    Point place = Point::Zero(); ///< what of it has to sink most, where it stands
    /// Everything that has to sink there lies across its push: nothing folds over itself.
    bool height_field = true;
    /// Nothing is seen from under what has to sink.
    bool nothing_seen_from_under = true;

    /// Whether a relief of just this depth does it, were its slopes free; else it is a bound only.
    bool attained() const { return height_field && nothing_seen_from_under; }
};

/// A surface as the relief leaves it.
struct ReshapedSurface {
    SurfaceId surface;
    Direction push = Direction::x(); ///< of what is drawn
    TriangleMesh mesh;               ///< refined where the relief needs it
    std::vector<Length> depths;      ///< one a point of `mesh`: how far it was pushed
};

/// What lies behind the pushed surface, along the push.
struct RoomBehind {
    Length distance;
    std::string part;
    Point from = Point::Zero(); ///< of the reshaped surface
};

/// The relief in figures; of the drawn side, its twin is alike.
struct ReliefShape {
    std::vector<ReshapedSurface> surfaces; ///< those that were changed
    Length deepest;
    std::string deepest_surface;
    Point deepest_before = Point::Zero(), deepest_after = Point::Zero();
    Area touched;        ///< of the surfaces as they were
    Volume volume;       ///< between the surfaces before and after
    Box box;             ///< around what was touched, before and after
    Angle steepest;      ///< slope of the depth, against the plane across the push
    Length deepest_edge; ///< how far an edge of a surface moves, at most
    std::optional<RoomBehind> nearest_behind; ///< none where nothing lies behind
};

/// What keeps a relief from reaching what is wanted.
enum class ReliefBarrier {
    fixed_part, ///< something that may not be reshaped hides too much
    max_depth,
    edges,       ///< fixed edges or untouched boxes, with the steepest slope that is allowed
    room_behind, ///< the pushed surface runs into something that is not pushed
    proof_only   ///< the relief was made, and `check` still says that it does not suffice
};
struct ReliefLimit {
    ReliefBarrier barrier = ReliefBarrier::fixed_part;
    std::size_t sight = 0;      ///< the direction that falls shortest, a place in Relief::sights
    Area reachable;             ///< what can be seen there at best within the limits
    std::string part;           ///< the fixed part that hides most there; or empty
    std::size_t directions = 1; ///< in how many directions this limit is met with
};

/// What the slope and the blend cost beside a relief with free slopes that sees as much.
struct SlopeCost {
    Length depth; ///< where held points do not let the slope be where it would be shallowest
    Area touched;
    Volume volume;
};

struct Relief {
    Findings before;
    std::vector<ReliefSight> sights; ///< none where nothing has to be done
    std::optional<LeastDepth> least; ///< none where no direction can be freed
    ReliefShape shape;               ///< no surfaces where none was changed
    SlopeCost slope_cost;
    std::vector<ReliefLimit> limits;   ///< none where what is wanted is reached
    std::optional<Findings> after;     ///< the reshaped surfaces, checked again
    std::size_t directions_gained = 0; ///< asked for, not met before, and met after
    int rounds = 0;                    ///< how often the relief was made and checked

    /// Whether the checks are met, as far as areas go, with what the wish wants to spare.
    bool found() const { return limits.empty(); }
};

/// Pushes the study's reshapeable surfaces in as Study::relief asks, looking every `step`.
///
/// The shape: in each direction the columns of the lit face are freed that cost the least volume
/// beside what other directions ask for; depths fall off no steeper than the wish says. The proof:
/// the reshaped surfaces are checked like any others; where they fall short by a little, the relief
/// is made a little deeper and checked again.
///
/// Throws InputError where no surface may be reshaped, Stopped where it was stopped.
Relief find_relief(const Study& study, Angle step, const Workers& workers = {});

/// The first part of it: how deep a relief has to be at least. `shape` and `after` stay empty.
Relief least_relief(const Study& study, Angle step, const Workers& workers = {});

} // namespace glim
