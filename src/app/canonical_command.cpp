#include "app/canonical_command.h"

#include "words/numbers.h"

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

std::string study_and_step(const std::filesystem::path& study, const std::optional<Angle>& step)
{
    return shell_word(study.filename().string()) +
           (step ? " --step " + shortest(in_degrees(*step)) : "");
}

} // namespace

std::string canonical_command(const CheckRequest& request)
{
    return "cornerglim check " + study_and_step(request.study, request.step) +
           (request.write_ies ? " --write-ies" : "");
}

std::string canonical_command(const ReportRequest& request, const std::string& day)
{
    return "cornerglim report " + study_and_step(request.study, request.step) +
           (day.empty() ? "" : " --date " + day) + " --out report";
}

std::string canonical_command(const TolerancesRequest& request)
{
    return "cornerglim tolerances " + study_and_step(request.study, request.step);
}

std::string canonical_command(const MarginsRequest& request)
{
    return "cornerglim margins " + study_and_step(request.study, request.step) +
           (request.reach ? " --reach " + shortest(in_mm(*request.reach)) : "");
}

std::string canonical_command(const StatesRequest& request)
{
    return "cornerglim states " + study_and_step(request.study, request.step);
}

std::string canonical_command(const KeepClearRequest& request)
{
    return "cornerglim keep-clear " + study_and_step(request.study, {});
}

std::string canonical_command(const SightLinesRequest& request)
{
    return "cornerglim sight-lines " + study_and_step(request.sketch, {});
}

} // namespace glim
