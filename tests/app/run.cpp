#include "app/run.h"

#include "machine/temporary_folder.h"

#include <cstdlib>

#include <sys/wait.h>

namespace glim::test {

namespace {

std::string in_quotes(const std::filesystem::path& path) { return "'" + path.string() + "'"; }

} // namespace

Ran run(const std::string& line, const std::string& folder)
{
    const TemporaryFolder kept;
    write(kept / "line.sh", "cd " + in_quotes(folder) + " || exit 99\nPATH=" +
                                in_quotes(GLIM_BINARY_DIR) + ":$PATH\n" + line + "\n");
    const std::string command = "sh " + in_quotes(kept / "line.sh") + " >" +
                                in_quotes(kept / "output") + " 2>" + in_quotes(kept / "errors") +
                                " </dev/null";
    const int status = std::system(command.c_str());
    const int code = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    return {code, read(kept / "output"), read(kept / "errors")};
}

std::string studies() { return std::string(GLIM_SOURCE_DIR) + "/tests/studies"; }

} // namespace glim::test
