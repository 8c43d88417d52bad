#include "report/photometry_facts.h"

#include "model/photometric_fields.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace glim;
using namespace glim::test;

namespace {

Photometry a_lamp()
{
    Photometry photometry;
    photometry.format = "LM-63-2002";
    photometry.grid = sampled(Goniometer::a, angles(-90, 90, 5), angles(-90, 90, 5), lambertian,
                              parts_of_a_and_b);
    photometry.filed_horizontals = 37;
    photometry.stated_flux = lumens(400);
    photometry.lamp_sets = {{.count = 1, .kind = "LED", .total_flux = lumens(400), .watts = 5}};
    photometry.notes = {{"TEST", "made up\x1b[31m"}};
    return photometry;
}

bool has(const std::string& text, const std::string& part)
{
    INFO(text);
    return text.find(part) != std::string::npos;
}

} // namespace

// A Lambertian of 100 cd gives 100 pi lm.
TEST_CASE("flux is integrated, and compared with the one that is stated", "[report]")
{
    const PhotometryFacts facts = photometry_facts(a_lamp(), "lamp.ies");
    CHECK(in_lumens(facts.flux) == Approx(314.159).epsilon(1e-3));
    CHECK(facts.flux_difference.value() == Approx(314.159 / 400 - 1).epsilon(1e-2));
    const std::string words = photometry_words(facts);
    CHECK(has(words, "400 lm from the bare light sources; integrated 21."));
    CHECK(has(words, " % less"));
}

TEST_CASE("the words tell type, range, peak, notes and what a study has to say", "[report]")
{
    const std::string words = photometry_words(photometry_facts(a_lamp(), "lamp.ies"));
    CHECK(words.starts_with("lamp.ies\n"));
    CHECK(has(words, "LM-63-2002, type A; relative"));
    CHECK(has(words, "H -90 to 90, V -90 to 90 deg"));
    CHECK(has(words, "100 cd at H 0, V 0"));
    CHECK(has(words, "0.16 lx on a screen 25 m away")); // 100 / 25^2
    CHECK(has(words, "a type A file does not say for which side it is"));
    CHECK(has(words, "1 x LED, 400 lm, 5 W"));
    CHECK(has(words, "TEST  made up?[31m"));
    CHECK(has(words, "Along H at V 0, in cd\n"));
    CHECK(has(words, "  H    0  100.00  ########################################\n"));
}

TEST_CASE("a file without a stated flux says so", "[report]")
{
    Photometry photometry = a_lamp();
    photometry.stated_flux.reset();
    photometry.absolute = true;
    const PhotometryFacts facts = photometry_facts(photometry, "lamp.ies");
    CHECK_FALSE(facts.flux_difference);
    CHECK(has(photometry_words(facts), "stated flux   none\n"));
    CHECK(nlohmann::json::parse(text_of(photometry_json(facts)))["flux"]["stated_lm"].is_null());
}

TEST_CASE("JSON has every intensity with its angles", "[report]")
{
    const auto json =
        nlohmann::json::parse(text_of(photometry_json(photometry_facts(a_lamp(), "lamp.ies"))));
    CHECK(json["type"] == "A");
    CHECK(json["symmetry"] == "none");
    CHECK(json["peak"]["candela"] == Approx(100));
    CHECK(json["flux"]["stated_of"] == "bare_lamps");
    CHECK(json["horizontal_deg"].size() == 37);
    CHECK(json["candela"].size() == 37);
    CHECK(json["candela"][18][18] == Approx(100));
    CHECK(json["candela"][19][18].get<double>() == Approx(100 * std::cos(5 * 3.14159265 / 180)));
    CHECK(json["notes"][0]["label"] == "TEST");
}
