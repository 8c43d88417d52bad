#include "app/run.h"
#include "input/read_photometry.h"
#include "machine/temporary_folder.h"
#include "model/photometric_fields.h"
#include "report/write_ies.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace glim;
using namespace glim::test;

namespace {

IntensityGrid field_grid()
{
    return sampled(Goniometer::a, angles(-45, 80, 2.5), angles(-15, 15, 2.5), skew_field,
                   parts_of_a_and_b);
}

} // namespace

TEST_CASE("a written photometric file reads back equal to the last bit", "[app]")
{
    const TemporaryFolder folder;
    const LitOpening opening{millimetres(50), millimetres(-100), millimetres(3)};
    const std::vector<PhotometryNote> notes = {{"TEST", "made up"}, {"OTHER", "\xc3\xa9t\xc3\xa9"}};
    write(folder / "lamp.ies", ies_text(field_grid(), opening, notes));
    const Photometry back = read_photometry(folder / "lamp.ies", "lamp.ies").photometry;
    CHECK(back.grid == field_grid());
    CHECK(back.opening == opening);
    CHECK(back.notes == notes);
    CHECK(back.absolute);
    CHECK(back.format == "LM-63-2002");
}

TEST_CASE("inspect tells of a photometric file, in words and as JSON", "[app]")
{
    const TemporaryFolder folder;
    write(folder / "a lamp.IES", ies_text(field_grid(), {}, {}));
    const Ran words = run("cornerglim inspect 'a lamp.IES'", folder.path().string());
    CHECK(words.exit_code == 0);
    CHECK(words.output.starts_with("a lamp.IES\n  format "));
    CHECK(words.errors.find("Warning: a lamp.IES:5:1: V goes from -15 to 15 degrees") !=
          std::string::npos);
    const Ran json = run("cornerglim inspect 'a lamp.IES' --json", folder.path().string());
    CHECK(nlohmann::json::parse(json.output)["type"] == "A");
    CHECK(json.exit_code == 0);
}

TEST_CASE("inspect refuses a spoilt photometric file with its places", "[app]")
{
    const Ran ran =
        run("cornerglim inspect candela-unreadable.ies", GLIM_SOURCE_DIR "/tests/bad/photometry");
    CHECK(ran.exit_code == 2);
    CHECK(ran.output.empty());
    CHECK(ran.errors.find("candela-unreadable.ies:9:3: `5O` is no number") != std::string::npos);
}
