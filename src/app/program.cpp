#include "app/program.h"

#include "app/command_line.h"
#include "app/commands.h"
#include "machine/standard_output.h"
#include "machine/stop.h"
#include "machine/terminal.h"
#include "machine/whole_file.h"
#include "model/complaint.h"

#include <algorithm>
#include <new>

namespace glim {

namespace {

/// Longer lines than this are hard to read on any terminal.
constexpr int most_columns = 100;

TextStyle style_of_output()
{
    if (!is_terminal(Stream::output))
        return {.columns = most_columns, .colour = false};
    return {.columns = std::min(most_columns, terminal_columns(Stream::output)),
            .colour = may_colour(Stream::output)};
}

Answer answer_to(const std::vector<std::string>& arguments)
{
    const Request request = read_command_line(arguments, GLIM_VERSION);
    const StopOnSignal stop;
    const Surroundings here{GLIM_VERSION, style_of_output(), stop.token()};
    return std::visit([&](const auto& asked) { return answer(asked, here); }, request);
}

int end(ExitCode code, const std::string& words)
{
    write_error(words);
    return static_cast<int>(code);
}

int end(const InputError& error)
{
    const std::size_t count = error.complaints().size();
    return end(ExitCode::bad_input, error.what() + std::to_string(count) +
                                        (count == 1 ? " complaint" : " complaints") +
                                        "; nothing was written\n");
}

int tell(const Answer& answer)
{
    write_output(answer.output);
    return end(answer.exit_code, answer.notes);
}

} // namespace

int run_program(const std::vector<std::string>& arguments)
{
    try {
        return tell(answer_to(arguments));
    } catch (const InputError& error) {
        return end(error);
    } catch (const WriteRefused& refused) {
        return end(
            InputError({{Place{refused.path.string(), 0, 0, {}}, refused.reason, refused.remedy}}));
    } catch (const Stopped&) {
        return end(ExitCode::stopped, "stopped; nothing was written\n");
    } catch (const std::bad_alloc&) {
        return end(ExitCode::failure, "cornerglim: there is not enough memory\n");
    } catch (const std::runtime_error& trouble) {
        return end(ExitCode::failure, "cornerglim: " + std::string(trouble.what()) + "\n");
    } catch (const std::exception& fault) {
        return end(ExitCode::failure, "cornerglim: a fault of the program, not of your files: " +
                                          std::string(fault.what()) + "\n");
    }
}

} // namespace glim
