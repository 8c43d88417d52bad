#include "model/study_keys.h"

#include <algorithm>
#include <array>

namespace glim {

namespace {

constexpr std::array keys = {
    StudyKey{"", "format", "", "required", "the version of this layout; always 1"},
    StudyKey{"", "base", "", "none",
             "another study, from the folder of this one, which this one changes"},
    StudyKey{"", "title", "", "none", "what the report is headed with"},
    StudyKey{"", "vehicle", "", "required", "the vehicle: its axes, its width, its modelled side"},
    StudyKey{"", "ground", "", "required", "where the ground is, in one state of load or several"},
    StudyKey{"", "mesh", "", "required", "the mesh files, one table each"},
    StudyKey{"", "surface", "", "required", "what the facets of the meshes are, one table each"},
    StudyKey{"", "lamp", "", "required", "the lamps, one table for each function"},
    StudyKey{"", "check", "", "required", "the questions, one table each"},
    StudyKey{"", "sampling", "", "as below", "how finely to look"},
    StudyKey{"", "add_lamp", "", "none", "where a further lamp may go: for `add-lamp`"},
    StudyKey{"", "move_lamp", "", "none", "how far a lamp may be moved: for `move-lamp`"},
    StudyKey{"", "relief", "", "as below", "what a relief of reshapeable surfaces has to keep to"},
    StudyKey{"", "keep_clear", "", "as below",
             "how far, how exactly and for which part of the lamp "
             "space is kept clear: for `keep-clear`"},
    StudyKey{"", "module", "", "none", "what is fitted as one, one table each"},
    StudyKey{"", "tolerance", "", "none",
             "how far bodies may be off as built, one table each: for `tolerances`"},
    StudyKey{"", "tolerances", "", "as below", "what `tolerances` is to find out"},
    StudyKey{"", "option", "", "none", "the variants to compare, one table each: for `compare`"},
    StudyKey{"", "costs", "", "none", "what is known of the programme that pays: for `compare`"},

    StudyKey{"vehicle", "category", "", "none", "M1, N1 and so on, or a US class"},
    StudyKey{"vehicle", "market", "", "none", "where the vehicle is to be sold"},
    StudyKey{"vehicle", "forward", "", "required",
             "the axis that points forward: \"+x\", \"-x\", \"+y\", \"-y\", \"+z\" or \"-z\""},
    StudyKey{"vehicle", "up", "", "required", "the axis that points up, likewise"},
    StudyKey{"vehicle", "median", "mm", "0",
             "where the median plane stands along the axis that points left"},
    StudyKey{"vehicle", "overall_width", "mm", "none",
             "the overall width as the regulation counts it, without mirrors and lamps"},
    StudyKey{
        "vehicle", "extreme_outer_edge", "mm", "half the overall width",
        "how far the extreme outer edge lies from the median plane, without mirrors and lamps"},
    StudyKey{"vehicle", "modelled_side", "", "required",
             "\"left\" or \"right\" for a half model, \"both\" for a whole body"},

    StudyKey{"ground", "unladen", "", "one of the three", "the ground of the unladen vehicle"},
    StudyKey{"ground", "curb", "", "one of the three", "the ground at curb weight"},
    StudyKey{"ground", "design", "", "one of the three", "the ground at design load"},

    StudyKey{"ground.unladen", "height", "mm", "one of the three",
             "where the ground is along the axis that points up"},
    StudyKey{"ground.unladen", "axles", "", "one of the three",
             "two points of the ground below the axles, where the vehicle is raked"},
    StudyKey{"ground.unladen", "plane", "", "one of the three", "the ground as any plane"},
    StudyKey{"ground.unladen.axles", "front", "mm", "required",
             "a point of the ground below the front axle, [x, y, z] of the vehicle"},
    StudyKey{"ground.unladen.axles", "rear", "mm", "required",
             "a point of the ground below the rear axle"},
    StudyKey{"ground.unladen.plane", "point", "mm", "required",
             "a point of the ground, [x, y, z] of the vehicle"},
    StudyKey{"ground.unladen.plane", "normal", "", "required",
             "the direction perpendicular to it, within 10 degrees of up"},

    StudyKey{"mesh", "name", "", "required", "how surfaces call this mesh"},
    StudyKey{"mesh", "remove", "", "false", "true to take away the base's entry of this name"},
    StudyKey{"mesh", "file", "", "required", "its file, from the folder of the study"},
    StudyKey{"mesh", "unit", "", "required",
             "the unit of its coordinates: \"mm\", \"cm\", \"m\", \"inch\" or \"foot\""},
    StudyKey{"mesh", "up", "", "required", "the axis of this file that points up"},
    StudyKey{"mesh", "forward", "", "required", "the axis of this file that points forward"},
    StudyKey{"mesh", "chord", "mm", "estimated from its facets",
             "how far its facets may lie from the surfaces that they stand for"},

    StudyKey{"surface", "name", "", "required", "how lamps and results call this surface"},
    StudyKey{"surface", "remove", "", "false", "true to take away the base's entry of this name"},
    StudyKey{"surface", "mesh", "", "required", "the mesh whose facets it takes"},
    StudyKey{"surface", "select", "", "the whole mesh",
             "which facets it takes: those that satisfy every key given"},
    StudyKey{"surface", "role", "", "opaque",
             "\"emitting\", \"opaque\", \"clear\" (never in the way), \"reflex\" (a reflex "
             "reflector: in the way, "
             "never lit) or \"ignored\""},
    StudyKey{"surface", "orient", "", "as-is, and asked about a lit face that looks inward",
             "which way its facets look: \"as-is\", \"flip\" (every facet is turned over) or "
             "\"outward\" (all are turned over if most look against the lamp's axis)"},
    StudyKey{"surface", "mirror", "", "no for a whole body, else required",
             "\"yes\" (has a twin on the other side), \"no\" (exists once) or \"straddles\" (drawn "
             "whole across the median plane)"},
    StudyKey{"surface", "reshaped", "", "none",
             "a mesh file, in mm and in the axes of the vehicle, that stands in the place of the "
             "facets that it takes: what a relief writes"},
    StudyKey{"surface", "clear_for", "", "none", "lamps that this surface never blocks"},
    StudyKey{"surface", "chord", "mm", "that of its mesh, else estimated from its facets",
             "how far its facets may lie from the surface that they stand for"},
    StudyKey{"surface", "moves_with", "", "none",
             "the lamp whose unit it is part of: it moves with it"},

    StudyKey{"surface", "reshapeable", "", "false",
             "true for a surface that may be pushed in, so that a lamp is seen over it"},
    StudyKey{"surface", "push", "", "against the mean of its facets' normals",
             "which way it is pushed in, [x, y, z] of the vehicle, of any length"},
    StudyKey{
        "surface", "fixed_edges", "", "none",
        "which of its edges stay where they are: \"all\", \"none\" or a list of boxes in which "
        "they stay"},

    StudyKey{"surface.fixed_edges", "least", "mm", "required",
             "the corner of the box with the least coordinates, [x, y, z] of the vehicle"},
    StudyKey{"surface.fixed_edges", "most", "mm", "required",
             "the corner with the greatest coordinates"},

    StudyKey{"surface.select", "object", "", "any",
             "pattern, or list of patterns, of object names"},
    StudyKey{"surface.select", "group", "", "any", "pattern, or list of patterns, of group names"},
    StudyKey{"surface.select", "material", "", "any",
             "pattern, or list of patterns, of material names"},
    StudyKey{"surface.select", "side", "", "both",
             "\"left\" or \"right\": facets whose centroid lies on that side of the median plane"},
    StudyKey{"surface.select", "box", "mm", "everywhere", "facets whose centroid lies in this box"},
    StudyKey{"surface.select", "facing", "", "any way",
             "[x, y, z] of the vehicle: facets whose outside looks that way, within 90 degrees"},
    StudyKey{
        "surface.select", "component_at", "mm", "all",
        "[x, y, z] of the vehicle: of what the other keys leave, the connected part that comes "
        "nearest to this point"},
    StudyKey{"surface.select.box", "least", "mm", "required",
             "the corner with the least coordinates, [x, y, z] of the vehicle"},
    StudyKey{"surface.select.box", "most", "mm", "required",
             "the corner with the greatest coordinates"},

    StudyKey{"lamp", "name", "", "required", "how checks and results call this lamp"},
    StudyKey{"lamp", "remove", "", "false", "true to take away the base's entry of this name"},
    StudyKey{"lamp", "function", "", "required",
             "what it signals, such as \"front_indicator\"; one lamp has one function"},
    StudyKey{"lamp", "category", "", "none",
             "the regulation's category, such as \"1a\"; where it is missing, a measured gap may "
             "give it"},
    StudyKey{"lamp", "side", "", "required", "\"left\", \"right\" or \"median\", as seated"},
    StudyKey{"lamp", "pair", "", "false", "true if a mirror image stands on the other side"},
    StudyKey{"lamp", "optional", "", "false",
             "true for a lamp that the regulation does not demand"},
    StudyKey{"lamp", "emits", "", "required", "its lit surfaces; their role must be emitting"},
    StudyKey{"lamp", "approved_with", "", "none",
             "surfaces that were in the way already when the lamp was approved"},
    StudyKey{"lamp", "axis", "", "the rule's own",
             "its reference axis: \"forward\", \"rearward\", \"outboard\" or [x, y, z]"},
    StudyKey{"lamp", "centre", "mm", "assumed from the lit surfaces",
             "its declared centre of reference, [x, y, z] of the vehicle"},
    StudyKey{"lamp", "surface_basis", "", "declared",
             "what its lit surfaces are: \"light_emitting\", \"illuminating\" or \"declared\""},
    StudyKey{"lamp", "trim", "", "none",
             "what is cut off its lit surfaces; what is left satisfies every key given"},

    StudyKey{"lamp", "photometry", "", "none",
             "its photometric file, LM-63 (.ies) or EULUMDAT (.ldt), from the folder of the study"},
    StudyKey{"lamp", "mounting", "", "none; required unless the file is alike left and right",
             "how the axes of the photometric file lie in the lamp"},
    StudyKey{"lamp", "brightness", "", "uniform",
             "which part of the lit face sends which share of the light: \"uniform\", or `shares` "
             "or `picture`"},
    StudyKey{"lamp", "transmittance", "", "1",
             "the share of the light that a clear cover lets through which was not there when the "
             "file was measured"},

    StudyKey{"lamp.mounting", "beam", "", "h0_v0",
             "what of the file lies along the lamp's axis: \"h0_v0\" (types A and B), \"nadir\" "
             "(type C measured facing down) or \"c0_horizontal\" (type C measured upright)"},
    StudyKey{"lamp.mounting", "roll", "deg", "0",
             "how far the file's up is turned from the lamp's, clockwise as seen from the lamp "
             "looking out"},
    StudyKey{"lamp.mounting", "measured_on", "", "required",
             "the lamp that was measured: \"left\", \"right\" or \"median\"; the other side gets "
             "the mirror image; of a median lamp only a file that is alike on both sides serves a "
             "lamp on one"},
    StudyKey{"lamp.brightness", "shares", "of 1", "this or picture",
             "one share for each surface of `emits`, in its order; each is evenly bright"},
    StudyKey{"lamp.brightness", "picture", "", "this or shares",
             "a luminance picture, grey PNG or rows of numbers, whose edges are those of what the "
             "lamp shows along its axis"},

    StudyKey{"lamp.trim", "inset", "mm", "none",
             "a border of this width along the open edges of the lit surfaces is dark"},
    StudyKey{"lamp.trim", "curve", "mm", "none",
             "a closed line that goes round what is lit, seen along the lamp's axis: [[x, y, z], "
             "...] of the vehicle, or the OBJ file that has it"},
    StudyKey{"lamp.trim", "box", "mm", "none", "what is lit lies in this box"},
    StudyKey{"lamp.trim.box", "least", "mm", "required",
             "the corner with the least coordinates, [x, y, z] of the vehicle"},
    StudyKey{"lamp.trim.box", "most", "mm", "required", "the corner with the greatest coordinates"},

    StudyKey{"check", "name", "", "required", "how results call this question"},
    StudyKey{"check", "remove", "", "false", "true to take away the base's entry of this name"},
    StudyKey{"check", "table", "", "required",
             "the requirement table: one beside the study, else one that comes with the program"},
    StudyKey{"check", "rule", "", "required", "a rule or a row of that table"},
    StudyKey{"check", "lamp", "", "this or lamps", "the lamp that is asked"},
    StudyKey{"check", "lamps", "", "this or lamp",
             "the lamps that are asked; the rule says whether one is enough"},

    StudyKey{"check", "state", "", "each row's own",
             "the state of load in which this check takes the ground"},
    StudyKey{"check", "option", "", "none",
             "the row or rule, or several, that the maker chose where the rule leaves a choice"},

    StudyKey{"sampling", "step", "deg", "1", "between neighbouring directions"},
    StudyKey{"sampling", "feature", "mm", "1", "the smallest obstacle that must not be missed"},
    StudyKey{"sampling", "touch", "mm", "0.05",
             "what is nearer than this to the lit face does not block"},
    StudyKey{"sampling", "hairline", "mm", "0.001",
             "a hidden strip of this width along the lit outline is touching, not hiding"},
    StudyKey{"sampling", "certify", "", "coarse",
             "where contours prove the bounds of areas: \"nowhere\", \"coarse\" (every 5 degrees) "
             "or \"everywhere\"; rows of obstacles are always proved everywhere"},
    StudyKey{"sampling", "finest", "deg", "0.1",
             "how near the places are brought where the outcome changes, and how finely to look "
             "between directions"},

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

/// Stands for [ground.curb] and [ground.design] too: the three hold the same keys.
constexpr std::string_view any_ground = "ground.unladen";

constexpr std::array repeated_sections = {"mesh",   "surface",   "lamp",  "check",
                                          "module", "tolerance", "option"};

} // namespace

std::span<const StudyKey> study_keys() { return keys; }

std::vector<std::string> study_keys_of(std::string_view section)
{
    std::vector<std::string> found;
    for (const StudyKey& k : keys)
        if (k.section == section)
            found.emplace_back(k.key);
    return found;
}

std::vector<std::string> study_sections_with(std::string_view key)
{
    std::vector<std::string> found;
    for (const StudyKey& k : keys)
        if (k.key == key)
            found.push_back(study_section_words(k.section));
    return found;
}

std::string study_section_words(std::string_view section)
{
    if (section.empty())
        return "the top of the study";
    if (section == any_ground)
        return "[" + std::string(section) + "]";
    if (const std::size_t dot = section.rfind('.'); dot != std::string_view::npos)
        return "`" + std::string(section.substr(dot + 1)) + "` of " +
               study_section_words(section.substr(0, dot));
    const bool repeated = std::find(repeated_sections.begin(), repeated_sections.end(), section) !=
                          repeated_sections.end();
    const std::string name(section);
    return repeated ? "[[" + name + "]]" : "[" + name + "]";
}

} // namespace glim
