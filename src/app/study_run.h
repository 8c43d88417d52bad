#pragma once

#include "app/commands.h"
#include "machine/new_folder.h"
#include "machine/progress_line.h"
#include "model/study.h"

#include <optional>

namespace glim {

/// The course of a command that asks a study: the folder that it fills, claimed before the work
/// begins, and the line that tells how far the work is.
class StudyRun {
public:
    /// `command` by its name, "relief". Throws WriteRefused where the folder cannot be had.
    StudyRun(const char* command, const StudyRequest& request, const Surroundings& here);

    /// None where nothing is written.
    NewFolder* folder() { return folder_ ? &*folder_ : nullptr; }
    /// For work that the line is to tell of: "looking", "directions".
    Workers telling(const std::string& doing, const std::string& pieces);
    /// Clears the line, as everything is done.
    void end() { line_.erase(); }
    /// The study's warnings and, unless quiet, what of the folder was written: `first`, or the
    /// folder itself where it is empty.
    std::string notes(const Study& study, const std::string& first = {}) const;

private:
    const StudyRequest& request_;
    const Surroundings& here_;
    std::optional<NewFolder> folder_;
    ProgressLine line_;
};

} // namespace glim
