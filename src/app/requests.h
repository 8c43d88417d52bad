#pragma once

#include "geometry/bearing.h"
#include "units/units.h"

#include <filesystem>
#include <optional>
#include <string>
#include <variant>

namespace glim {

// What somebody can ask of the program on its command line, one struct a command.

/// What most commands are asked: to do something with a study.
struct StudyRequest {
    std::filesystem::path study;
    std::optional<std::filesystem::path> out; ///< without it nothing is written
    std::optional<Angle> step;                ///< in place of the study's own
    unsigned threads = 0;                     ///< 0: all cores
    bool json = false;
    bool quiet = false;
};

struct CheckRequest : StudyRequest {
    bool write_ies = false; ///< into `out`, what is left of each lamp's light
};

/// A check that leaves a report behind.
struct ReportRequest {
    std::filesystem::path study;
    std::filesystem::path out;
    std::optional<Angle> step;       ///< in place of the study's own
    std::optional<std::string> date; ///< "today" or a day as "2026-01-02"
    unsigned threads = 0;            ///< 0: all cores
    bool quiet = false;
};

/// One eye's view of one lamp.
struct PictureRequest {
    std::filesystem::path study;
    Bearing toward;                           ///< from the lamp to the eye
    std::optional<std::string> lamp;          ///< its name; the only one, if there is one
    bool far_side = false;                    ///< its mirror image, across the median plane
    std::optional<std::filesystem::path> out; ///< else in the folder where it is run
    unsigned threads = 0;                     ///< 0: all cores
};

/// The least relief of surfaces that may be reshaped.
struct ReliefRequest : StudyRequest {};

/// Options of a study side by side; `step` in place of that of each.
struct CompareRequest : StudyRequest {};

/// Where one more lamp could go: [add_lamp] of the study.
struct AddLampRequest : StudyRequest {};

/// How far a lamp has to be moved: [move_lamp] of the study.
struct MoveLampRequest : StudyRequest {};

/// Builds within the tolerances of a study; `step` in place of that of [tolerances].
struct TolerancesRequest : StudyRequest {};

/// How far each surface may move before a check changes its outcome; `step` in place of 5 degrees.
struct MarginsRequest : StudyRequest {
    std::optional<Length> reach;
};

/// The checks in other states of the vehicle, and with parts moved.
struct StatesRequest : StudyRequest {};

/// The space that has to stay empty for a study's checks: [keep_clear] of the study.
/// It has no `step`: its options leave it out.
struct KeepClearRequest : StudyRequest {};

/// The limits that a rule sets to a body still to be drawn.
struct SightLinesRequest {
    std::filesystem::path sketch;
    std::optional<std::filesystem::path> out; ///< without it nothing is written
    unsigned threads = 0;                     ///< 0: all cores
    bool json = false;
};

struct InspectRequest {
    std::filesystem::path file;
    bool json = false;
};

struct NewRequest {
    std::filesystem::path mesh;
    std::optional<std::filesystem::path> out; ///< else beside the mesh, as a .toml; "-": to the
                                              ///< standard output
    bool force = false;
};

struct TablesRequest {
    std::optional<std::string> table; ///< a name or a file; else all that come with the program
    bool json = false;
};

/// Help or the version: what to print is all there is.
struct TextRequest {
    std::string text;
};

using Request = std::variant<CheckRequest, ReportRequest, PictureRequest, ReliefRequest,
                             AddLampRequest, MoveLampRequest, CompareRequest, TolerancesRequest,
                             MarginsRequest, StatesRequest, KeepClearRequest, SightLinesRequest,
                             InspectRequest, NewRequest, TablesRequest, TextRequest>;

} // namespace glim
