#include "report/html_style.h"

#include "report/page_colours.h"

#include <array>
#include <string_view>

namespace glim {

namespace {

struct NamedColour {
    std::string_view name;
    Colour colour;
};
constexpr std::array named_colours = {
    NamedColour{"ink", ink},
    NamedColour{"quiet", quiet_ink},
    NamedColour{"heading", heading_ink},
    NamedColour{"met", met_ink},
    NamedColour{"not-met", not_met_ink},
    NamedColour{"open", open_ink},
    NamedColour{"paper", white},
    NamedColour{"head-paper", head_paper},
    NamedColour{"notice-paper", notice_paper},
    NamedColour{"line", rule_line},
    NamedColour{"notice-line", notice_line},
};

// Anything may break that does not fit: names of surfaces and files are as long as their makers
// like.
constexpr std::string_view rules = R"(
body { margin: 0 auto; max-width: 62rem; padding: 1.5rem; background: var(--paper);
  color: var(--ink); font: 1rem/1.5 "DejaVu Sans", Verdana, sans-serif;
  overflow-wrap: anywhere; }
h1, h2, h3, h4 { color: var(--heading); line-height: 1.25; margin: 1.6em 0 0.5em; }
h1 { font-size: 1.7rem; margin-top: 0; }
h2 { font-size: 1.35rem; border-bottom: 2px solid var(--line); padding-bottom: 0.2em; }
h3 { font-size: 1.1rem; }
h4 { font-size: 1rem; }
.lead { font-size: 1.1rem; font-weight: bold; }
.date, nav, figcaption, caption { color: var(--quiet); }
nav { font-size: 0.9rem; }
nav ol { padding-left: 1.2rem; columns: 18rem; }
nav ol > li { break-inside: avoid; }
nav ul { padding-left: 1rem; list-style: none; }
nav a { color: var(--heading); }
nav h2 { font-size: 1rem; border: 0; margin: 1em 0 0; }
.met { color: var(--met); }
.not-met { color: var(--not-met); font-weight: bold; }
.open { color: var(--open); font-weight: bold; }
dl { display: grid; grid-template-columns: minmax(6rem, 11rem) 1fr; gap: 0.25rem 1rem; }
dt { color: var(--quiet); }
dd { margin: 0; grid-column: 2; }
.wide { overflow-x: auto; margin: 1rem 0; }
table { border-collapse: collapse; width: 100%; font-size: 0.82rem; line-height: 1.35; }
caption { text-align: left; padding-bottom: 0.3rem; font-size: 0.9rem; }
th, td { padding: 0.3rem 0.5rem; border-bottom: 1px solid var(--line); vertical-align: top;
  text-align: left; overflow-wrap: break-word; }
thead th { background: var(--head-paper); }
tbody th { font-weight: normal; overflow-wrap: anywhere; }
.figures-column { text-align: right; font-variant-numeric: tabular-nums; }
td.figures-column, .code { white-space: nowrap; }
.figures { display: flex; flex-wrap: wrap; gap: 1rem; }
figure { margin: 0.5rem 0; max-width: 100%; }
figure img { display: block; max-width: 100%; height: auto; }
figcaption { font-size: 0.85rem; }
figcaption strong { color: var(--ink); }
.notice { background: var(--notice-paper); border-left: 0.4rem solid var(--notice-line);
  padding: 0.6rem 1rem; margin: 1rem 0; }
.sheet { max-width: 80rem; }
@page { size: A4; margin: 16mm 15mm; }
@page sheet { size: A4 landscape; margin: 9mm 12mm; }
@media print {
  body { max-width: none; padding: 0; font-size: 9.5pt; print-color-adjust: exact;
    -webkit-print-color-adjust: exact; }
  nav { display: none; } /* links are of no use on paper */
  h2, h3, h4, caption { break-after: avoid; }
  figure, tr, .notice { break-inside: avoid; }
  thead { display: table-header-group; }
  .page-break { break-before: page; }
  .sheet { page: sheet; max-width: none; font-size: 7.5pt; line-height: 1.3; }
  .sheet h1 { font-size: 14pt; }
  .sheet h2, .sheet h3 { margin: 0.6em 0 0.2em; font-size: 9.5pt; }
  .sheet dl { gap: 0 1rem; margin: 0.2em 0; }
  .sheet figcaption { font-size: 0.9em; }
  .sheet p, .sheet figure, .sheet .notice { margin: 0.3em 0; }
  .wide { overflow-x: visible; }
}
)";

} // namespace

std::string html_style()
{
    std::string style = ":root {";
    for (const NamedColour& named : named_colours)
        style += " --" + std::string(named.name) + ": " + hex_of(named.colour) + ";";
    return style + " }" + std::string(rules);
}

} // namespace glim
