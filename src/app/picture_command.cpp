#include "app/commands.h"
#include "app/request_of.h"
#include "drawing/eye_view.h"
#include "input/read_study.h"
#include "judgement/new_look.h"
#include "machine/whole_file.h"
#include "model/nearest_word.h"
#include "model/usual_axis.h"
#include "report/file_names.h"
#include "words/numbers.h"
#include "words/warning_words.h"

#include <array>
#include <fstream>

namespace glim {

namespace {

[[noreturn]] void refuse_lamp(const std::string& what, const std::string& remedy)
{
    refuse(command_line_place(), what, remedy);
}

LampId lamp_asked(const Study& study, const PictureRequest& request)
{
    std::vector<std::string> names;
    for (const Lamp& lamp : study.lamps)
        names.push_back(lamp.name);
    if (!request.lamp) {
        if (names.size() != 1)
            refuse_lamp("the study has " + counted(names.size(), "lamp") +
                            ", and --lamp does not say which",
                        "name " + listed(names, "or"));
        return LampId{0};
    }
    for (const LampId id : study.lamps.ids())
        if (study.lamps[id].name == *request.lamp)
            return id;
    refuse_lamp("the study has no lamp `" + *request.lamp + "`",
                did_you_mean(*request.lamp, names));
}

LampStanding standing_asked(const Study& study, const PictureRequest& request)
{
    const LampId lamp = lamp_asked(study, request);
    if (request.far_side && !study.lamps[lamp].paired)
        refuse_lamp("lamp `" + study.lamps[lamp].name + "` has no mirror image on the far side",
                    "leave --far-side away, or say `pair = true` in the study");
    return {lamp, request.far_side, Obstacles::all};
}

/// "picture-indicator-H-45-V0.png"
std::filesystem::path file_asked(const PictureRequest& request, const std::string& lamp)
{
    return request.out.value_or(plain_name("picture-" + lamp) +
                                (request.far_side ? "-far-side" : "") + "-H" +
                                shortest(in_degrees(request.toward.h)) + "-V" +
                                shortest(in_degrees(request.toward.v)) + ".png");
}

/// ISO/IEC 15948, 5.2.
constexpr std::string_view png_signature = "\x89PNG\r\n\x1a\n";

bool is_png(const std::filesystem::path& file)
{
    std::array<char, png_signature.size()> first{};
    std::ifstream(file, std::ios::binary).read(first.data(), first.size());
    return std::string_view(first.data(), first.size()) == png_signature;
}

/// A picture makes way for a picture, and nothing else does: least of all the study and what it
/// stands on.
void refuse_harm(const std::filesystem::path& file, const Study& study)
{
    const std::string remedy = "name a new file, or a picture to be replaced";
    const std::filesystem::path folder = std::filesystem::path(study.file).parent_path();
    if (!std::filesystem::is_regular_file(file))
        return;
    for (const SourceFile& source : study.files)
        if (std::error_code none; source.use != FileUse::shipped_table &&
                                  std::filesystem::equivalent(folder / source.file, file, none))
            throw WriteRefused(file, "is a file that the study is read from", remedy);
    if (!is_png(file))
        throw WriteRefused(file, "is there already and is no PNG", remedy);
}

} // namespace

Answer answer(const PictureRequest& request, const Surroundings& here)
{
    const Study study = read_study(request.study, WithoutChecks::read);
    const LampStanding standing = standing_asked(study, request);
    const Lamp& lamp = study.lamps[standing.lamp];
    const std::filesystem::path file = file_asked(request, lamp.name);
    refuse_harm(file, study);
    const Workers workers{.threads = request.threads, .stop = here.stop, .progress = {}};
    const PreparedScene scene(study, workers);
    const LampLook look = new_look(study, scene, {standing}, usual_axis(lamp.function), "");
    const EyeView view(study, scene, look);
    const Figure figure = view.toward(request.toward, workers);
    write_file_atomically(file, png_of(figure.drawing), IfThere::replace);
    return {ExitCode::met,
            wrapped(figure.caption, here.style.columns) + "\n" +
                wrapped(caution, here.style.columns) + "\n",
            warnings_words(study.warnings, here.style) + "Written: " + harmless(file.string()) +
                "\n"};
}

} // namespace glim
