#pragma once

#include "remedy/column_choice.h"
#include "remedy/depth_field.h"
#include "remedy/least_depth.h"
#include "remedy/refine_surface.h"
#include "remedy/wanted_depth.h"

namespace glim {

/// How finely the surface is divided where a relief is made: a fiftieth of the largest lit face's
/// diagonal, within these.
inline constexpr Length finest_edge = millimetres(0.5);
inline constexpr Length coarsest_edge = millimetres(3);
double edge_for_relief(const ReliefGround& ground);

/// Slope and blend of the wish, as numbers.
FieldRules field_rules(const ReliefWish& wish);

/// One byte a point of a patch's refined mesh: 1 where it may not move, being on a fixed edge or in
/// an untouched box.
std::vector<std::uint8_t> held_points(const ReliefGround& ground, std::size_t patch,
                                      const NumberedMesh& mesh);

/// The area that each point stands for, across the push, mm2.
std::vector<double> areas_across(const TriangleMesh& mesh, const Direction& push);

/// A demand that some relief can meet, and the depth that suffices for it alone with free slopes.
struct FeasibleDemand {
    std::size_t demand = 0; ///< place among the demands
    double needed_mm2 = 0;
    double depth_mm = 0;
};

/// Which columns to free toward which direction, and how deep.
struct ReliefPlan {
    std::vector<DepthAsked> asked;
    double deepest_mm = 0; ///< no column is freed deeper; more than the demands' own depths only
                           ///< where held points make it so
    /// Feasible demands that fall short because of held points, and what they then see, mm2.
    std::vector<std::pair<std::size_t, double>> held_back; ///< places among the feasible
};

/// Throws Stopped.
ReliefPlan relief_plan(const ReliefGround& ground, const std::vector<ReliefDemand>& demands,
                       const Findings& findings, const std::vector<FeasibleDemand>& feasible,
                       const Workers& workers);

} // namespace glim
