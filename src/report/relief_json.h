#pragma once

#include "model/study.h"
#include "remedy/relief.h"
#include "report/json.h"

namespace glim {

/// relief.json: the least depth and where it comes from, every direction in which too little was
/// seen, the relief in figures, its limits, and what the checks say before and after. Lengths in
/// mm, areas in mm2, volumes in mm3, angles in degrees; places in the vehicle's frame.
Json relief_json(const Relief& relief, const Study& study);

} // namespace glim
