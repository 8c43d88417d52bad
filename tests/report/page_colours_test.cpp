#include "report/html_style.h"
#include "report/page_colours.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;

namespace {

// Relative luminance and contrast as WCAG 2.1 defines them.
double linear(std::uint8_t channel)
{
    const double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

double luminance(Colour c)
{
    return 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue);
}

double contrast(Colour a, Colour b)
{
    const double bright = std::max(luminance(a), luminance(b));
    const double dark = std::min(luminance(a), luminance(b));
    return (bright + 0.05) / (dark + 0.05);
}

constexpr double least_contrast = 4.5; // WCAG 2.1, success criterion 1.4.3

} // namespace

// The published example: grey 119 on white has 4.48 to 1, and so it just fails.
TEST_CASE("contrast is measured as the guidelines have it", "[report]")
{
    CHECK(contrast(black, white) == Approx(21));
    CHECK(contrast({119, 119, 119}, white) == Approx(4.48).margin(0.005));
}

TEST_CASE("all text of a report can be read against what lies below it", "[report]")
{
    for (const Colour text : {ink, quiet_ink, heading_ink, met_ink, not_met_ink, open_ink})
        CHECK(contrast(text, white) >= least_contrast);
    CHECK(contrast(ink, head_paper) >= least_contrast);
    CHECK(contrast(ink, notice_paper) >= least_contrast);
}

TEST_CASE("the style sheet has no colours but those that were measured", "[report]")
{
    const std::string style = html_style();
    const std::string rules = style.substr(style.find('}'));
    CHECK(rules.find('#') == std::string::npos);
    CHECK(rules.find("rgb") == std::string::npos);
    CHECK(style.find("--ink: " + hex_of(ink) + ";") != std::string::npos);
    CHECK(style.find("--notice-paper: " + hex_of(notice_paper) + ";") != std::string::npos);
}

TEST_CASE("outcomes differ in brightness from plain text or in weight, not in hue alone",
          "[report]")
{
    const std::string style = html_style();
    CHECK(style.find(".not-met { color: var(--not-met); font-weight: bold; }") !=
          std::string::npos);
    CHECK(style.find(".open { color: var(--open); font-weight: bold; }") != std::string::npos);
}
