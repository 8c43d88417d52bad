#include "model/study_key_lists.h"

#include <array>

namespace glim {

namespace {

constexpr std::array keys = {
    StudyKey{"module", "name", "", "required", "how tolerances and modules call it"},
    StudyKey{"module", "remove", "", "false", "true to take away the base's entry of this name"},
    StudyKey{"module", "surfaces", "", "none", "surfaces that are fitted with it"},
    StudyKey{"module", "lamps", "", "none", "lamps that are, with all that `moves_with` them"},
    StudyKey{"module", "modules", "", "none", "modules that are, with all that is in them"},

    StudyKey{"tolerance", "name", "", "required", "how results call this tolerance"},
    StudyKey{"tolerance", "remove", "", "false", "true to take away the base's entry of this name"},
    StudyKey{"tolerance", "surfaces", "", "or lamps, or module", "surfaces that stray together"},
    StudyKey{"tolerance", "lamps", "", "or surfaces",
             "lamps that do, with all that `moves_with` them"},
    StudyKey{"tolerance", "module", "", "or surfaces, lamps", "the module that strays"},
    StudyKey{"tolerance", "origin", "", "required",
             "\"part\" (whoever makes it answers for it) or \"installation\" (whoever fits it)"},
    StudyKey{"tolerance", "distribution", "", "required",
             "what a figure t means: \"normal\" (t is one standard deviation), \"uniform\" or "
             "\"triangular\" (within t to either side), \"limits\" (normal, with t at so many "
             "`sigmas`)"},
    StudyKey{"tolerance", "sigmas", "", "required for limits", "standard deviations up to a limit"},
    StudyKey{"tolerance", "forward", "mm", "0", "along the vehicle, to either side"},
    StudyKey{"tolerance", "outboard", "mm", "0", "across the vehicle"},
    StudyKey{"tolerance", "up", "mm", "0", "up and down"},
    StudyKey{"tolerance", "turn", "deg", "0", "about the vertical through `about`"},
    StudyKey{"tolerance", "tilt", "deg", "0", "about the line across the vehicle through `about`"},
    StudyKey{"tolerance", "roll", "deg", "0", "about the line along the vehicle through `about`"},
    StudyKey{"tolerance", "profile", "mm", "0",
             "every point of a surface along its normal; of surfaces only"},
    StudyKey{"tolerance", "about", "mm", "required where it turns",
             "the point about which it turns, [x, y, z] of the vehicle"},

    StudyKey{"tolerances", "checks", "", "all", "the checks that builds are to meet"},
    StudyKey{"tolerances", "builds", "", "4096", "so many builds are looked at for the shares"},
    StudyKey{"tolerances", "directions", "", "21",
             "how many deciding directions each lamp is looked at from; 0: the whole field"},
    StudyKey{"tolerances", "step", "deg", "5",
             "between the directions of the field that they are chosen from"},
    StudyKey{"tolerances", "seed", "", "1", "another number gives other builds"},
    StudyKey{"tolerances", "contributor", "", "none", "the tolerance that is to be adjusted"},
    StudyKey{"tolerances", "share", "", "0.997", "of the builds that are to meet every check"},

    StudyKey{"state", "name", "", "required", "how results call this state"},
    StudyKey{"state", "remove", "", "false", "true to take away the base's entry of this name"},
    StudyKey{"state", "from", "", "the first of the grounds",
             "the ground that this state changes: "
             "\"unladen\", \"curb\" or \"design\""},
    StudyKey{"state", "rise", "mm", "0",
             "by so much the body stands higher above it; below 0: lower"},
    StudyKey{"state", "pitch", "deg", "0", "by so much the nose is up; below 0: down"},
    StudyKey{"state", "about", "mm", "required where it pitches",
             "the point that stays at its height as the body pitches, [x, y, z] of the vehicle"},
    StudyKey{"state", "height", "mm", "or axles, or plane, or a change",
             "where the ground is along the axis that points up, in place of a change"},
    StudyKey{"state", "axles", "", "or height, or plane, or a change",
             "two points of the ground below the axles"},
    StudyKey{"state", "plane", "", "or height, or axles, or a change", "the ground as any plane"},
    StudyKey{"state.axles", "front", "mm", "required",
             "a point of the ground below the front axle, [x, y, z] of the vehicle"},
    StudyKey{"state.axles", "rear", "mm", "required", "a point of the ground below the rear axle"},
    StudyKey{"state.plane", "point", "mm", "required",
             "a point of the ground, [x, y, z] of the vehicle"},
    StudyKey{"state.plane", "normal", "", "required",
             "the direction perpendicular to it, within 10 degrees of up"},

    StudyKey{"moved_part", "name", "", "required", "how results call this part"},
    StudyKey{"moved_part", "remove", "", "false",
             "true to take away the base's entry of this name"},
    StudyKey{"moved_part", "surfaces", "", "required",
             "the surfaces that move with it; those of role \"ignored\" are there in its positions "
             "alone"},
    StudyKey{"moved_part", "position", "", "required",
             "the fixed positions that it can be in besides the one drawn"},
    StudyKey{"moved_part.position", "name", "", "required", "how results call this position"},
    StudyKey{"moved_part.position", "turn", "deg", "0",
             "by so much it is turned about `axis`, right-handed"},
    StudyKey{"moved_part.position", "about", "mm", "required where it turns",
             "a point of its hinge line, [x, y, z] of the vehicle"},
    StudyKey{"moved_part.position", "axis", "", "required where it turns",
             "the direction of its hinge line, [x, y, z] of the vehicle, of any length"},
    StudyKey{"moved_part.position", "shift", "mm", "[0, 0, 0]",
             "by so much it is shifted after the turn, [x, y, z] of the vehicle"},
};

} // namespace

std::span<const StudyKey> keys_of_what_varies() { return keys; }

} // namespace glim
