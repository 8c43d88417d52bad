#pragma once

#include "app/exit_code.h"
#include "app/requests.h"
#include "words/text_block.h"

#include <stop_token>
#include <string>

namespace glim {

/// Where a command runs.
struct Surroundings {
    std::string program_version;
    TextStyle style;      ///< of text on standard output
    std::stop_token stop; ///< set by Ctrl-C
};

/// What a command has to say, and how the program ends.
struct Answer {
    ExitCode exit_code = ExitCode::met;
    std::string output; ///< for standard output
    std::string notes;  ///< for standard error
};

// One function a command. All throw InputError or WriteRefused if the user's files are wrong,
// Stopped if they were stopped, std::runtime_error if the machine fails.

/// Reads the study, checks it, writes the results if asked to, and tells them.
Answer answer(const CheckRequest& request, const Surroundings& here);
/// The same with a report, which is written to a folder with the results.
Answer answer(const ReportRequest& request, const Surroundings& here);
/// Pictures a lamp of the study from one direction and tells what it shows.
Answer answer(const PictureRequest& request, const Surroundings& here);
/// Finds how shallow a relief frees the lamps, shapes it and proves it.
Answer answer(const ReliefRequest& request, const Surroundings& here);
/// Judges the options of a study and holds them side by side.
Answer answer(const CompareRequest& request, const Surroundings& here);
/// Searches the body for a place for one more lamp and tells what it found.
Answer answer(const AddLampRequest& request, const Surroundings& here);
/// Searches for the least move of a lamp that is enough and tells what it found.
Answer answer(const MoveLampRequest& request, const Surroundings& here);
/// Builds the vehicle within its tolerances and tells how often its checks are met. Stopped after a
/// while, it tells what it knows by then.
Answer answer(const TolerancesRequest& request, const Surroundings& here);
/// Finds how far each surface may move and tells it.
Answer answer(const MarginsRequest& request, const Surroundings& here);
/// Draws the space that has to stay empty and tells what reaches into it.
Answer answer(const StatesRequest& request, const Surroundings& here);
Answer answer(const KeepClearRequest& request, const Surroundings& here);
/// Tells what limits a rule sets to a body that is still to be drawn.
Answer answer(const SightLinesRequest& request, const Surroundings& here);
/// Tells what is in a mesh file or in a photometric file.
Answer answer(const InspectRequest& request, const Surroundings& here);
/// Writes a first study for a mesh file; never over another file unless forced to.
Answer answer(const NewRequest& request, const Surroundings& here);
/// Shows requirement tables, or checks one of the user's own.
Answer answer(const TablesRequest& request, const Surroundings& here);
/// Help and version.
Answer answer(const TextRequest& request, const Surroundings& here);

} // namespace glim
