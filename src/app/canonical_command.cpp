#include "app/canonical_command.h"

#include "report/numbers.h"

#include <algorithm>
#include <string_view>

namespace glim {

namespace {

bool is_plain(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
           std::string_view("._-+/").find(c) != std::string_view::npos;
}

std::string shell_word(const std::string& word)
{
    if (std::all_of(word.begin(), word.end(), is_plain))
        return word;
    std::string quoted = "'";
    for (const char c : word)
        quoted += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return quoted + "'";
}

} // namespace

std::string canonical_command(const CheckRequest& request)
{
    std::string command = "cornerglim check " + shell_word(request.study.filename().string());
    if (request.step)
        command += " --step " + shortest(in_degrees(*request.step));
    return command;
}

} // namespace glim
