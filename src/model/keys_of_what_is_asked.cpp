#include "model/study_key_lists.h"

#include <array>

namespace glim {

namespace {

constexpr std::array keys = {
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
};

} // namespace

std::span<const StudyKey> keys_of_what_is_asked() { return keys; }

} // namespace glim
