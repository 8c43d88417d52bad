#pragma once

#include "report/document.h"

namespace glim::test {

/// A document with a block of every kind: its figure is 100 x 50 points.
inline Document made_document()
{
    const Drawing drawing{100, 50, [](Canvas& canvas) {
                              canvas.fill(path_of({0, 0, 100, 50}), {{0, 114, 178}});
                          }};
    Document document{"A & B", "2026-01-02", {}};
    document.blocks = {
        Heading{1, "First"},
        Paragraph{"A sentence.", Tone::not_met, true},
        BulletList{{"one", "two"}},
        Terms{{{"label", {"line", "another"}}}},
        Table{"What it shows",
              {{"Name"}, {"Area", ColumnKind::figures}},
              {{{"nose"}, {"12 mm2", Tone::open}}, {{"wing"}, {"3 mm2"}}}},
        PageBreak{},
        Heading{2, "Within"},
        Figures{{{drawing, "A chart", "Read it so", "blue \"all over\"", false},
                 {drawing, "A picture", "Seen so", "blue pixels", true}}},
        Notice{"Mind this"},
    };
    return document;
}

} // namespace glim::test
