#include "app/command_table.h"

#include "app/request_of.h"

#include <array>

namespace glim {

namespace {

constexpr CommandOption out_folder{"--out", "DIR",
                                   "write result.json, directions.csv, verdicts.csv and "
                                   "summary.txt to this folder",
                                   &Words::out};
constexpr CommandOption out_file{"--out", "FILE",
                                 "write the study here; - for the terminal. Without it, beside the "
                                 "mesh, as FILE.toml",
                                 &Words::out};
constexpr CommandOption step{"--step", "DEG",
                             "look every so many degrees, in place of the study's own step; above "
                             "0, at most 45",
                             &Words::step};
constexpr CommandOption threads{"--threads", "N",
                                "work on so many threads; 0, as without it, for all cores. The "
                                "results are the same to the byte",
                                &Words::threads};
constexpr CommandOption report_folder{"--out", "DIR",
                                      "write report.html and report.pdf to this folder, and all "
                                      "that `check` writes",
                                      &Words::out};
constexpr CommandOption date{"--date", "DAY",
                             "the day that the report bears, as 2026-01-31, or `today`. Without it "
                             "that of SOURCE_DATE_EPOCH, else none",
                             &Words::date};
constexpr CommandOption json{"--json", "", "print one JSON document instead of text", &Words::json};
constexpr CommandOption quiet{"--quiet", "", "print a line for each check, and no progress",
                              &Words::quiet};
constexpr CommandOption force{"--force", "", "replace the file if it is there", &Words::force};

constexpr CommandOption toward{"--toward", "H,V",
                               "from the lamp to the eye: degrees outboard (inboard below 0) and "
                               "up (down below 0), such as -45,0",
                               &Words::toward};
constexpr CommandOption lamp{
    "--lamp", "NAME", "the lamp to look at; may be left out where the study has one", &Words::lamp};
constexpr CommandOption far_side{
    "--far-side", "", "look at the lamp's mirror image across the vehicle", &Words::far_side};
constexpr CommandOption picture_file{"--out", "FILE",
                                     "write the PNG here, in place of what is there; else as "
                                     "picture-LAMP-H-45-V0.png in this folder",
                                     &Words::out};

constexpr CommandOption relief_folder{"--out", "DIR",
                                      "write a study to check, the reshaped meshes, depths, "
                                      "sections and the body to be cut away to this folder",
                                      &Words::out};
constexpr CommandOption comparison_folder{"--out", "DIR",
                                          "write comparison.html and comparison.pdf with pictures "
                                          "of every option, and the same as .json, .csv and .txt",
                                          &Words::out};

constexpr CommandOption remedy_folder{"--out", "DIR",
                                      "write the study that comes out, ready for `check`, and what "
                                      "it stands on to this folder",
                                      &Words::out};

constexpr CommandOption tolerances_folder{"--out", "DIR",
                                          "write tolerances.html and tolerances.pdf with "
                                          "histograms and contributions, and the same as .json, "
                                          ".csv and .txt, to this folder",
                                          &Words::out};
constexpr CommandOption margins_folder{"--out", "DIR",
                                       "write margins.html and margins.pdf with charts, and the "
                                       "same as .json, .csv and .txt, to this folder",
                                       &Words::out};
constexpr CommandOption margins_step{"--step", "DEG",
                                     "look every so many degrees, in place of 5; corners of fields "
                                     "are looked at in any case",
                                     &Words::step};
constexpr CommandOption reach{
    "--reach", "MM", "move no surface further than this, in place of 20 mm", &Words::reach};

constexpr CommandOption states_folder{"--out", "DIR",
                                      "write states.html and states.pdf, with a picture of every "
                                      "position of a moved part, and the same as .json, .csv and "
                                      ".txt, to this folder",
                                      &Words::out};

constexpr CommandOption keep_clear_folder{"--out", "DIR",
                                          "write every space as STL and OBJ, what reaches into it "
                                          "as painted meshes and maps, and a page of it all to "
                                          "this folder",
                                          &Words::out};

constexpr CommandOption sight_lines_folder{"--out", "DIR",
                                           "write a page to pin up, the views as SVG and DXF, and "
                                           "the curves as CSV to this folder",
                                           &Words::out};

constexpr CommandOption write_ies{"--write-ies", "",
                                  "with --out: write what is left of the light of every lamp that "
                                  "has a photometric file, as light/LAMP-AXIS.ies, or "
                                  "light/LAMP-mirrored-AXIS.ies on the far side",
                                  &Words::write_ies};

constexpr std::array check_options{out_folder, step, threads, json, quiet, write_ies};
constexpr std::array report_options{report_folder, step, date, threads, quiet};
constexpr std::array picture_options{toward, lamp, far_side, picture_file, threads};
constexpr std::array relief_options{relief_folder, step, threads, json, quiet};
constexpr std::array compare_options{comparison_folder, step, threads, json, quiet};
constexpr std::array remedy_options{remedy_folder, step, threads, json, quiet};
constexpr std::array tolerances_options{tolerances_folder, step, threads, json, quiet};
constexpr std::array margins_options{margins_folder, margins_step, reach, threads, json, quiet};
constexpr std::array states_options{states_folder, step, threads, json, quiet};
constexpr std::array keep_clear_options{keep_clear_folder, threads, json, quiet};
constexpr std::array sight_lines_options{sight_lines_folder, threads, json};
constexpr std::array inspect_options{json};
constexpr std::array new_options{out_file, force};
constexpr std::array tables_options{json};

constexpr std::array commands = {
    Command{"check", "STUDY", "look at every lamp of a study and judge its checks",
            "STUDY is a study file (docs/study-file.md). Nothing is written without --out.",
            check_options, check_request},
    Command{"report", "STUDY", "check a study and write a report of it",
            "STUDY is a study file (docs/study-file.md). The report (docs/report.md) is a page "
            "for browsers and a PDF that say the same; the exit code is that of `check`.",
            report_options, report_request},
    Command{"picture", "STUDY", "picture a lamp as an eye sees it from one direction",
            "STUDY is a study file; it needs no checks. The picture (docs/pictures.md) shows what "
            "of the lamp is seen, what is hidden and by what.",
            picture_options, picture_request},
    Command{"relief", "STUDY", "find how shallow a relief frees the lamps, and shape it",
            "STUDY is a study file with surfaces that are `reshapeable` (docs/relief.md). Found is "
            "what a check of the reshaped surfaces confirms.",
            relief_options, relief_request},
    Command{"add-lamp", "STUDY", "search the body for a place for one more lamp",
            "STUDY is a study file with [add_lamp] (docs/add-lamp.md): which surfaces may carry a "
            "lamp that would make the checks be met. Ends with 0 where a place is found and "
            "confirmed by a check, with 1 where none is.",
            remedy_options, add_lamp_request},
    Command{"move-lamp", "STUDY", "search for the least move of a lamp that is enough",
            "STUDY is a study file with [move_lamp] (docs/move-lamp.md): how far a lamp may be "
            "moved, with all that moves with it, for its checks to be met. Ends with 0 where a "
            "move is found and confirmed by a check, with 1 where none is.",
            remedy_options, move_lamp_request},
    Command{"keep-clear", "STUDY",
            "draw the space that has to stay empty, and what reaches into it",
            "STUDY is a study file (docs/keep-clear.md); [keep_clear] says how far and how exactly "
            "the space is drawn. Ends with 0 where nothing reaches into it, else with 1.",
            keep_clear_options, keep_clear_request},
    Command{"sight-lines", "SKETCH", "tell what limits a rule sets before there is a body",
            "SKETCH is a short file (docs/sight-lines.md): the width of the vehicle, the place and "
            "outline of a lens, a rule. Ends with 0 where the lens stands where the table lets it, "
            "else with 1.",
            sight_lines_options, sight_lines_request},
    Command{"compare", "STUDY", "hold the options of a study side by side, with what they cost",
            "STUDY is a study file with an [[option]] for each variant (docs/compare.md): a theme, "
            "or what a remedy has written. Each is checked again. What is known of costs stands in "
            "[costs] and with the options; nothing is filled in.",
            compare_options, compare_request},
    Command{"tolerances", "STUDY", "tell how many builds within tolerances meet the checks",
            "STUDY is a study file with a [[tolerance]] for whatever may be off (docs/"
            "tolerances.md). Ends with 0 where the wanted share of builds surely meets every "
            "check, with 1 where surely fewer do, with 4 in between, with 130 where it was "
            "stopped: then what is known is told, marked as partial.",
            tolerances_options, tolerances_request},
    Command{"margins", "STUDY", "tell in mm how far each surface may move, or has to",
            "STUDY is a study file (docs/margins.md). Each surface is moved by itself until a "
            "check changes its outcome. Ends with 0 where every check is met as drawn, with 1 "
            "where one is not.",
            margins_options, margins_request},
    Command{"states", "STUDY", "look at the checks in other states, and with parts moved",
            "STUDY is a study file with a [[state]] of ride height, pitch or load, or a "
            "[[moved_part]] (docs/states.md). The rule's own state, and what tables ask of moved "
            "parts, are verdicts; all else is information. The exit code is that of the verdicts.",
            states_options, states_request},
    Command{"inspect", "FILE", "tell what is in a mesh or photometric file",
            "FILE is a mesh: OBJ, STL, PLY or OFF (docs/mesh-formats.md). Shows its parts, its "
            "size, the unit "
            "it is likely drawn in, and what is untidy about it. Or FILE is a photometric file: "
            "LM-63 (.ies) or EULUMDAT (.ldt) (docs/photometric-files.md). Shows what was measured, "
            "the peak, and the flux beside the one it states.",
            inspect_options, inspect_request},
    Command{"new", "FILE", "write a first study for a mesh file",
            "FILE is a mesh. The study lists its parts and says in comments what is to be filled "
            "in.",
            new_options, new_request},
    Command{"tables", "[TABLE]", "show requirement tables and where their figures come from",
            "TABLE is the name of one that comes with the program, or a file of your own, which is "
            "checked (docs/requirement-tables.md). Without it, all that come with the program.",
            tables_options, tables_request},
};

} // namespace

std::span<const Command> command_table() { return commands; }

} // namespace glim
