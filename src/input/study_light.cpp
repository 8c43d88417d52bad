#include "input/study_light.h"

#include "input/file_digest.h"
#include "input/luminance_map.h"
#include "input/read_photometry.h"
#include "input/study_section.h"
#include "input/text_file.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace glim {

namespace {

/// Shares are written with few digits; a third is 0.333.
constexpr double shares_add_up_within = 0.005;

std::optional<Photometry> read_file(TableReader& table, LightDraft& draft, const std::string& name)
{
    const std::filesystem::path path = table.folder_of("photometry") / name;
    try {
        const std::string bytes = read_text_file(path, table.place_of("photometry"));
        PhotometryFile file = read_photometry(path, path.string());
        draft.files.push_back({FileUse::photometry, path.string(), identity_of(bytes)});
        draft.warnings = std::move(file.warnings);
        return std::move(file.photometry);
    } catch (const InputError& error) {
        table.complaints().add(error);
        return std::nullopt;
    }
}

std::optional<Mounting> read_mounting(TableReader& lamp)
{
    std::optional<TableReader> table = lamp.table("mounting", "`mounting` of " + lamp.words());
    if (!table)
        return std::nullopt;
    Mounting mounting;
    if (const auto* beam = table->row_of("beam", beam_axis_words, &BeamAxisWord::key))
        mounting.beam = beam->axis;
    mounting.roll = table->angle("roll").value_or(Angle());
    table->demand("measured_on", "say which lamp was measured: \"left\", \"right\" or \"median\"");
    if (const auto* side = table->row_of("measured_on", side_words, &SideWord::word))
        mounting.measured_on = side->side;
    finish_section(*table, "lamp.mounting");
    return mounting;
}

void complain_of_median(TableReader& table, const Photometry& photometry, const Mounting& mounting,
                        Side side)
{
    if (mounting.measured_on != Side::median || side == Side::median ||
        is_alike_on_both_sides(photometry.grid, mounting))
        return;
    table.complain("mounting",
                   "`mounting` of " + table.words() +
                       " says that a median lamp was measured, but the file is not alike on both "
                       "sides and the lamp stands on one: nothing tells which half is outboard",
                   "say for which lamp the file is: measured_on = \"left\" or \"right\"");
}

/// Of a file that can be used: it knows at least the lamp's own axis.
void check_mounting(TableReader& table, const Photometry& photometry,
                    const std::optional<Mounting>& mounting, Side side)
{
    if (const auto trouble = mounting_trouble(photometry, mounting))
        return table.complain(mounting ? "mounting" : "photometry", trouble->what, trouble->remedy);
    const Eigen::Matrix3d turn =
        file_from_lamp(mounting.value_or(Mounting{}), ReferenceAxis::forward);
    if (!intensity_toward(photometry.grid, turn, {}))
        table.complain("photometry",
                       "the photometric file of " + table.words() +
                           " was not measured along the lamp's axis",
                       "look at `beam` of `mounting`, or name another file");
    if (mounting)
        complain_of_median(table, photometry, *mounting, side);
}

BrightBySurface read_shares(TableReader& table, const Lamp& lamp)
{
    const std::string remedy = "write one share for each surface of `emits`, in its order; "
                               "together they are 1";
    BrightBySurface by;
    by.shares = table.numbers("shares", lamp.emits.size(), remedy).value_or(std::vector<double>{});
    const bool sound = std::all_of(by.shares.begin(), by.shares.end(),
                                   [](double share) { return share >= 0 && share <= 1; });
    const double sum = std::accumulate(by.shares.begin(), by.shares.end(), 0.0);
    if (!by.shares.empty() && (!sound || std::abs(sum - 1) > shares_add_up_within))
        table.complain("shares", "`shares` of " + table.words() + " are no shares of one light",
                       remedy);
    return by;
}

std::optional<LuminancePicture> read_picture(TableReader& table, const Lamp& lamp,
                                             LightDraft& draft)
{
    const std::optional<std::string> name = table.text("picture");
    if (!name)
        return std::nullopt;
    if (!lamp.axis)
        table.complain("picture", table.words() + " lies before a lamp that declares no axis",
                       "write `axis` in the [[lamp]]: the picture is laid on along it");
    const std::filesystem::path path = table.folder_of("picture") / *name;
    try {
        const std::string bytes = read_text_file(path, table.place_of("picture"));
        GreyMap map = read_luminance_map(bytes, path.string());
        draft.files.push_back({FileUse::luminance, path.string(), identity_of(bytes)});
        return LuminancePicture{*name, map.columns, map.rows, std::move(map.grey)};
    } catch (const InputError& error) {
        table.complaints().add(error);
        return std::nullopt;
    }
}

Brightness read_brightness(TableReader& lamp_table, const Lamp& lamp, LightDraft& draft)
{
    if (lamp_table.holds_text("brightness")) {
        lamp_table.choice("brightness", {std::string(brightness_words.front().key)});
        return UniformlyBright{};
    }
    std::optional<TableReader> table =
        lamp_table.table("brightness", "`brightness` of " + lamp_table.words());
    if (!table)
        return UniformlyBright{};
    if (table->has("shares") == table->has("picture"))
        table->complaints().add(table->place(), table->words() + " is not said in one way",
                                "write shares = [0.7, 0.3], one for each surface of `emits`, or "
                                "picture = \"FILE\"");
    Brightness brightness = UniformlyBright{};
    const BrightBySurface by = read_shares(*table, lamp);
    if (by.shares.size() > 1) // all the light of one surface is what uniform says
        brightness = by;
    if (auto picture = read_picture(*table, lamp, draft))
        brightness = std::move(*picture);
    finish_section(*table, "lamp.brightness");
    return brightness;
}

double read_transmittance(TableReader& table)
{
    const double share = table.number("transmittance", "of 1").value_or(1);
    if (share > 0 && share <= 1)
        return share;
    table.complain("transmittance", "`transmittance` of " + table.words() + " is no share of 1",
                   "write a number above 0 and up to 1: 0.9 lets 90 % of the light through");
    return 1;
}

void complain_of_light_without_file(TableReader& table)
{
    for (const std::string_view key : {"mounting", "brightness", "transmittance"})
        if (table.has(key) && !table.has("photometry"))
            table.complain(key,
                           "`" + std::string(key) + "` of " + table.words() +
                               " says something of a photometric file that is not named",
                           "name it, photometry = \"FILE.ies\", or take the key away");
}

} // namespace

LightDraft read_light(TableReader& table, const Lamp& lamp)
{
    LightDraft draft;
    const std::optional<std::string> name = table.text("photometry");
    std::optional<Photometry> photometry = name ? read_file(table, draft, *name) : std::nullopt;
    const std::optional<Mounting> mounting = read_mounting(table);
    if (photometry)
        check_mounting(table, *photometry, mounting, lamp.side);
    Brightness brightness = read_brightness(table, lamp, draft);
    const double transmittance = read_transmittance(table);
    complain_of_light_without_file(table);
    if (photometry)
        draft.light = LampLight{{},
                                *name,
                                std::move(*photometry),
                                mounting.value_or(Mounting{}),
                                std::move(brightness),
                                transmittance};
    return draft;
}

} // namespace glim
