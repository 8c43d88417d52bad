#include "model/study_key_lists.h"

#include <array>

namespace glim {

namespace {

constexpr std::array keys = {
    StudyKey{"add_lamp", "carriers", "", "this or boxes", "surfaces that may carry the lamp"},
    StudyKey{"add_lamp", "boxes", "mm", "everywhere",
             "boxes, { least, most } each; the lamp may go where one of them holds a facet's "
             "centroid"},
    StudyKey{"add_lamp", "lamp", "", "the first that the checks ask",
             "the lamp that it is to help; the harness is measured to it"},
    StudyKey{"add_lamp", "function", "", "that of the lamp it helps", "what it signals"},
    StudyKey{"add_lamp", "checks", "", "all", "the checks that are to be met"},
    StudyKey{"add_lamp", "proportion", "", "round",
             "of its lens, as seen against its face: width to height, such as 2, or \"round\""},
    StudyKey{"add_lamp", "largest", "mm", "200", "its lens is nowhere wider than this"},
    StudyKey{"add_lamp", "rank", "", "least-area",
             "what comes first: \"least-area\", \"near-lamp\", \"far-from-nose\" or "
             "\"least-visible-change\""},
    StudyKey{"add_lamp", "places", "", "3", "how many places apart from each other to work out"},
    StudyKey{"add_lamp.boxes", "least", "mm", "required",
             "the corner with the least coordinates, [x, y, z] of the vehicle"},
    StudyKey{"add_lamp.boxes", "most", "mm", "required",
             "the corner with the greatest coordinates"},

    StudyKey{"move_lamp", "lamp", "", "the first that the checks ask", "the lamp that may move"},
    StudyKey{"move_lamp", "checks", "", "all", "the checks that are to be met"},
    StudyKey{"move_lamp", "forward", "mm", "[-50, 50]",
             "how far it may go rearward (below 0) and forward; [0, 0]: not at all"},
    StudyKey{"move_lamp", "outboard", "mm", "[-50, 50]", "likewise inboard (below 0) and outboard"},
    StudyKey{"move_lamp", "up", "mm", "[-50, 50]", "likewise down (below 0) and up"},
    StudyKey{"move_lamp", "turn", "deg", "[-10, 10]",
             "how far it may turn about the vertical, to look more inboard (below 0) or outboard"},
    StudyKey{"move_lamp", "tilt", "deg", "[-5, 5]",
             "how far it may tilt, to look more down (below 0) or up"},
    StudyKey{"move_lamp", "map", "", "[\"forward\", \"outboard\"]",
             "two of these five, across and up, for the map of what passes"},
    StudyKey{"relief", "checks", "", "all", "the names of the checks that have to be met"},
    StudyKey{"relief", "max_depth", "mm", "as deep as it takes",
             "no point is pushed further than this"},
    StudyKey{"relief", "steepest", "deg", "30",
             "the steepest slope of the relief against the surface as it was"},
    StudyKey{"relief", "blend", "mm", "10",
             "the radius with which the rim of the relief runs out into the surface"},
    StudyKey{"relief", "spare_area", "mm2", "0",
             "so much more than the rule asks for has to be seen"},
    StudyKey{"relief", "spare", "mm", "0",
             "so far below the lines of sight the reshaped surface has to stay"},
    StudyKey{"relief", "untouched", "", "none",
             "boxes in which nothing moves: mounting points, the number plate"},
    StudyKey{"relief.untouched", "least", "mm", "required",
             "the corner of the box with the least coordinates, [x, y, z] of the vehicle"},
    StudyKey{"relief.untouched", "most", "mm", "required",
             "the corner with the greatest coordinates"},

    StudyKey{"keep_clear", "checks", "", "all", "the names of the checks whose space is wanted"},
    StudyKey{"keep_clear", "box", "", "around all that could stand in the way",
             "the space ends at the sides of this box"},
    StudyKey{"keep_clear", "plane", "", "none",
             "the space ends at this upright plane, in place of a box"},
    StudyKey{"keep_clear", "chord_error", "mm", "2",
             "how far the mesh may lie outside the space that it stands for; it never lies inside"},
    StudyKey{
        "keep_clear", "favour", "", "\"least-volume\"",
        "where a part of the lamp is enough, which part is kept in view: \"upper\", \"lower\", "
        "\"inner\", \"outer\", or \"least-volume\" for the one that needs the smallest space"},
    StudyKey{"keep_clear", "part_step", "deg", "5",
             "every how many degrees of H that part is chosen anew, above and below the horizontal "
             "apart"},
    StudyKey{"keep_clear.box", "least", "mm", "required",
             "the corner of the box with the least coordinates, [x, y, z] of the vehicle"},
    StudyKey{"keep_clear.box", "most", "mm", "required",
             "the corner with the greatest coordinates"},
    StudyKey{"keep_clear.plane", "point", "mm", "required",
             "a point of the plane, [x, y, z] of the vehicle"},
    StudyKey{"keep_clear.plane", "normal", "", "required",
             "the level direction in which the space leaves through it"},
    StudyKey{"option", "name", "", "required", "how results call this variant"},
    StudyKey{"option", "remove", "", "false", "true to take away the base's entry of this name"},
    StudyKey{"option", "study", "", "required",
             "its study, or a folder of results with a study.toml in it, from the folder of this "
             "study; it is checked again"},
    StudyKey{"option", "costs", "", "not known", "what it costs, entry by entry"},
    StudyKey{"option", "others_cost_nothing", "", "false",
             "true where what `costs` does not name costs nothing; else it counts as not known"},
    StudyKey{"option.costs", "parts", "money a vehicle", "not known", "parts added"},
    StudyKey{"option.costs", "harness", "money a vehicle", "not known", "wiring added"},
    StudyKey{"option.costs", "fitting", "money a vehicle", "not known", "the work of fitting it"},
    StudyKey{"option.costs", "tooling", "money", "not known", "tools, new or changed, once"},
    StudyKey{"option.costs", "station", "money", "not known", "the place on the line, once"},
    StudyKey{"option.costs", "hours", "hours", "not known", "engineering hours, once"},
    StudyKey{"option.costs", "changes", "changes", "not known", "engineering changes, once"},

    StudyKey{"costs", "currency", "", "required", "how sums of money are labelled"},
    StudyKey{"costs", "volume", "vehicles a year", "not known", "how many are built"},
    StudyKey{"costs", "years", "years", "not known", "for how long"},
    StudyKey{"costs", "hour", "money an hour", "not known", "what an engineering hour costs"},
    StudyKey{"costs", "change", "money a change", "not known", "what an engineering change costs"},
};

} // namespace

std::span<const StudyKey> keys_of_remedies() { return keys; }

} // namespace glim
