#include "app/canonical_command.h"
#include "app/commands.h"
#include "input/read_lamp_sketch.h"
#include "machine/progress_line.h"
#include "machine/terminal.h"
#include "report/sight_lines_json.h"
#include "report/write_sight_lines.h"
#include "words/sight_lines_words.h"

namespace glim {

Answer answer(const SightLinesRequest& request, const Surroundings& here)
{
    const LampSketch sketch = read_lamp_sketch(request.sketch);
    std::optional<NewFolder> folder;
    if (request.out)
        folder.emplace(*request.out, "sight-lines");
    ProgressLine line(may_show_progress());
    const SightLines lines =
        find_sight_lines(sketch, {.threads = request.threads,
                                  .stop = here.stop,
                                  .progress = line.telling("drawing sight lines", "rows")});
    line.erase();
    if (folder)
        write_sight_lines(lines, sketch, canonical_command(request), *folder);
    return {lines.kept() ? ExitCode::met : ExitCode::not_met,
            request.json ? text_of(sight_lines_json(lines, sketch, canonical_command(request)))
                         : sight_lines_words(lines, sketch, here.style),
            folder ? "Written: " + harmless(request.out->string()) + "\n" : ""};
}

} // namespace glim
