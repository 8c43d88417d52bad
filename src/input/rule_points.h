#pragma once

#include "input/table_reader.h"
#include "model/criterion.h"

namespace glim {

/// Reads a criterion of kind "point_table": points as [h, v, figure], in degrees, the figure in cd
/// or as percent of the intensity that is asked on the axis; or groups of points with totals:
///
///     criterion = { kind = "point_table", axis_cd = 4, mirrored = true, percent = [
///         [0, 0, 100], [5, 0, 90], ...
///     ] }
///     criterion = { kind = "point_table", floor = 0.6, multiplied_by = "spacing", groups = [
///         { name = "1", total = 130, cd = [[20, 5, 25], ...] },
///     ] }
///
/// `mirrored` adds the mirror image of every point that is not at H 0.
Criterion read_point_table(TableReader& table);

/// The mirror image: for a table that counts H inboard-positive.
void turn_about_vertical(LightTable& table);

/// Of `points`, a field of single directions, only those that `relaxed` holds, which becomes them.
/// None is a complaint about `row`.
void keep_points(TableReader& row, const Field& points, Field& relaxed);

} // namespace glim
