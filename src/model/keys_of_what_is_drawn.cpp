#include "model/study_key_lists.h"

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
    StudyKey{"", "state", "", "none",
             "ride heights, pitch and load to look at too, one table each: for `states`"},
    StudyKey{"", "moved_part", "", "none",
             "parts that can stay elsewhere than drawn, one table each: for `states`"},
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
};

} // namespace

std::span<const StudyKey> keys_of_what_is_drawn() { return keys; }

} // namespace glim
