#pragma once

#include "app/requests.h"
#include "model/complaint.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>

namespace glim {

/// What stands on the command line after the command's name, not yet understood.
struct Words {
    std::optional<std::string> argument;
    std::optional<std::string> out, step, threads, date, toward, lamp, reach;
    bool json = false;
    bool quiet = false;
    bool force = false;
    bool far_side = false;
    bool write_ies = false;
    bool help = false;
};

/// One option, described once: for the reader, for `--help`, for complaints.
struct CommandOption {
    using Flag = bool Words::*;
    using Value = std::optional<std::string> Words::*;

    std::string_view name;  ///< "--step"
    std::string_view value; ///< what follows it: "DEG"; empty for a flag
    std::string_view sentence;
    std::variant<Flag, Value> kept_in;
};

struct Command {
    std::string_view name;
    std::string_view argument; ///< "STUDY"; in brackets if it may be left out
    std::string_view sentence;
    std::string_view more; ///< what the argument and the answer are
    std::span<const CommandOption> options;
    Request (*read)(const Words&, Complaints&); ///< understands the words

    bool needs_argument() const { return argument.front() != '['; }
};

std::span<const Command> command_table();

} // namespace glim
