#pragma once

#include "app/command_table.h"
#include "app/requests.h"

#include <string>

namespace glim {

/// What complaints about the command line give as their place.
inline Place command_line_place() { return {"command line", 0, 0, {}}; }

/// The coarsest look that is still one: 45 degrees is half of many fields.
inline constexpr Angle largest_step = degrees(45);

/// Further off a part is another part.
inline constexpr Length longest_reach = millimetres(500);

// What the words of each command mean; what they do not mean is complained of.
Request check_request(const Words& words, Complaints& complaints);
Request report_request(const Words& words, Complaints& complaints);
Request picture_request(const Words& words, Complaints& complaints);
Request relief_request(const Words& words, Complaints& complaints);
Request compare_request(const Words& words, Complaints& complaints);
Request add_lamp_request(const Words& words, Complaints& complaints);
Request move_lamp_request(const Words& words, Complaints& complaints);
Request tolerances_request(const Words& words, Complaints& complaints);
Request margins_request(const Words& words, Complaints& complaints);
Request states_request(const Words& words, Complaints& complaints);
Request keep_clear_request(const Words& words, Complaints& complaints);
Request sight_lines_request(const Words& words, Complaints& complaints);
Request inspect_request(const Words& words, Complaints& complaints);
Request new_request(const Words& words, Complaints& complaints);
Request tables_request(const Words& words, Complaints& complaints);

/// Understands the words of one command. Throws InputError with everything that is wrong.
Request request_of(const Command& command, const Words& words);

} // namespace glim
