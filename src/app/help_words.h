#pragma once

#include "app/command_table.h"

#include <string>

namespace glim {

/// What `cornerglim --help` prints: the commands and the exit codes.
std::string program_help();

/// What `cornerglim COMMAND --help` prints.
std::string command_help(const Command& command);

} // namespace glim
