#include "input/read_trim.h"

#include "input/file_digest.h"
#include "input/read_box.h"
#include "input/read_curve.h"
#include "input/study_section.h"
#include "input/text_file.h"

namespace glim {

namespace {

std::optional<Length> read_inset(TableReader& trim)
{
    const std::optional<Length> inset = trim.length("inset");
    if (!inset || *inset > millimetres(0))
        return inset;
    trim.complain("inset", "`inset` of " + trim.words() + " is not above 0",
                  "write how wide the border is, or take the key away");
    return std::nullopt;
}

void read_curve_file(TableReader& trim, TrimDraft& draft)
{
    const std::optional<std::string> file = trim.text("curve");
    if (!file)
        return;
    const std::filesystem::path path = trim.folder_of("curve") / *file;
    try {
        const std::string text = read_text_file(path, trim.place_of("curve"));
        draft.curve_file = SourceFile{FileUse::curve, path.string(), identity_of(text)};
        draft.trim.curve = read_curve(text, path.string());
    } catch (const InputError& error) {
        trim.complaints().add(error);
    }
}

std::vector<Point> curve_in_list(TableReader& trim)
{
    const std::string remedy =
        "write the points of a closed line, [[x, y, z], ...] in mm, or the name of its OBJ file";
    std::vector<Point> curve;
    for (const TomlValue& element : trim.list("curve")) {
        const std::optional<std::vector<double>> p = numbers_in(element, 3);
        if (p)
            curve.emplace_back((*p)[0], (*p)[1], (*p)[2]);
        else
            trim.complaints().add(element.place,
                                  "`curve` of " + trim.words() + " holds what is no point", remedy);
    }
    if (curve.size() > 1 && curve.front() == curve.back())
        curve.pop_back();
    if (trim.has("curve") && curve.size() < 3)
        trim.complain("curve", "`curve` of " + trim.words() + " encloses nothing", remedy);
    return curve;
}

} // namespace

std::optional<TrimDraft> read_trim(TableReader& lamp)
{
    std::optional<TableReader> table = lamp.table("trim", "`trim` of " + lamp.words());
    if (!table)
        return std::nullopt;
    const std::size_t complaints_before = lamp.complaints().size();
    TrimDraft draft;
    Trim& trim = draft.trim;
    trim.inset = read_inset(*table);
    if (table->holds_text("curve"))
        read_curve_file(*table, draft);
    else
        trim.curve = curve_in_list(*table);
    trim.box = read_box(*table, "lamp.trim.box");
    finish_section(*table, "lamp.trim");
    if (lamp.complaints().size() > complaints_before)
        return std::nullopt;
    if (trim.inset || !trim.curve.empty() || trim.box)
        return draft;
    lamp.complain("trim", table->words() + " cuts nothing",
                  "write `inset`, `curve` or `box` in it");
    return std::nullopt;
}

} // namespace glim
