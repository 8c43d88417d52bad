#pragma once

#include "remedy/added_lamp.h"
#include "report/json.h"

namespace glim {

/// The answer as data: what was asked, the places, how candidates fared. Places are in the vehicle
/// frame.
Json added_lamp_json(const AddedLampAnswer& answer, const Study& study, const AddLampTask& task);

/// "lens of place 2" and so on: a row for each place, with its figures.
std::string places_csv(const AddedLampAnswer& answer, const Study& study);

} // namespace glim
