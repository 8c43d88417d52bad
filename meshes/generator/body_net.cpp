#include "generator/body_net.h"

#include <array>

namespace glim::demo {
namespace {

/// One column of the net: where it stands in plan on the body proper, on the bumper and at the foot
/// of the windscreen, and to which of the three faces it belongs (the rest is side).
struct Column {
    Point2 body; ///< x, w
    Point2 bumper;
    Point cowl;
    double nose;
    double front;
};

// In plan the nose is a prow: its shoulder (column 5) stands far ahead of the lamp (columns 8 to
// 10) and falls back to it at some 60 degrees, more than the 45 of a view from the far side.
constexpr int column_count = 17;
const std::array<Column, column_count> columns{{
    {{-800, 0}, {-832, 0}, {100, 0, 962}, 1, 0},
    {{-800, 28}, {-832, 60}, {100, 32, 962}, 1, 0},
    {{-775, 122}, {-830, 180}, {104, 120, 961}, 1, 0},
    {{-736, 226}, {-818, 310}, {112, 215, 959}, 1, 0},
    {{-676, 307}, {-790, 430}, {125, 300, 956}, 1, 0},
    {{-596, 370}, {-752, 530}, {142, 372, 953}, 1, 0},
    {{-518, 410}, {-715, 600}, {162, 432, 950}, .6, .4},
    {{-458, 468}, {-680, 655}, {188, 490, 946}, .2, .8},
    {{-416, 535}, {-645, 700}, {222, 548, 942}, 0, 1},
    {{-386, 610}, {-595, 752}, {264, 602, 938}, 0, 1},
    {{-342, 688}, {-535, 800}, {314, 650, 934}, 0, 1},
    {{-282, 760}, {-455, 838}, {368, 690, 930}, 0, .75},
    {{-205, 816}, {-350, 864}, {424, 722, 927}, 0, .4},
    {{-90, 860}, {-215, 882}, {478, 748, 924}, 0, .1},
    {{90, 890}, {20, 897}, {530, 768, 922}, 0, 0},
    {{350, 906}, {310, 907}, {578, 784, 920}, 0, 0},
    {{620, 910}, {620, 910}, {620, 798, 919}, 0, 0},
}};

/// How one row of the net departs from the plan on one face.
struct Level {
    double back; ///< x, mm
    double out;  ///< w, mm
    double z;
};

struct Row {
    double bumper; ///< share of the bumper's plan
    double cowl;   ///< share of the windscreen's foot
    double crown;  ///< mm upward, on top of the share
    Level nose;
    Level front;
    Level side;
};

constexpr int row_count = 15;
const std::array<Row, row_count> rows{{
    {1, 0, 0, {90, -10, 72}, {70, -25, 66}, {0, -60, 40}},
    {1, 0, 0, {22, 0, 78}, {18, -4, 72}, {0, -22, 62}},
    {1, 0, 0, {0, 0, 140}, {0, 0, 136}, {0, 0, 130}},
    {1, 0, 0, {-4, 0, 250}, {-2, 0, 250}, {0, 0, 250}},
    {1, 0, 0, {2, 0, 352}, {2, 0, 352}, {0, 0, 360}},
    {.8, 0, 0, {6, 0, 428}, {6, 0, 424}, {0, 0, 450}},
    {.04, 0, 0, {14, 0, 486}, {0, 0, 482}, {0, 0, 530}},
    {0, 0, 0, {17, 0, 590}, {-6, 0, 580}, {0, 2, 610}},
    {0, 0, 0, {4, 0, 690}, {2, 0, 676}, {0, 2, 690}},
    {0, 0, 0, {12, 0, 768}, {14, 0, 744}, {0, -2, 750}},
    {0, 0, 0, {32, 0, 822}, {38, 0, 786}, {0, -10, 800}},
    {0, 0, 0, {88, 0, 850}, {116, -4, 808}, {10, -32, 836}},
    {0, .3, 14, {88, 0, 850}, {116, -4, 808}, {10, -32, 836}},
    {0, .68, 14, {88, 0, 850}, {116, -4, 808}, {10, -32, 836}},
    {0, 1, 0, {88, 0, 850}, {116, -4, 808}, {10, -32, 836}},
}};

Point control_point(const Row& row, const Column& column)
{
    const double side = 1 - column.nose - column.front;
    const auto mixed = [&](double Level::*part) {
        return column.nose * row.nose.*part + column.front * row.front.*part +
               side * row.side.*part;
    };
    const Point2 plan = (1 - row.bumper) * column.body + row.bumper * column.bumper;
    // On the median plane nothing may leave it.
    const double out = plan.y() > 0 ? mixed(&Level::out) : 0;
    const Point low(plan.x() + mixed(&Level::back), plan.y() + out, mixed(&Level::z));
    return (1 - row.cowl) * low + row.cowl * column.cowl + Vector(0, 0, row.crown);
}

} // namespace

CubicSurface body_surface()
{
    std::vector<Point> net;
    net.reserve(rows.size() * columns.size());
    for (const Row& row : rows)
        for (const Column& column : columns)
            net.push_back(control_point(row, column));
    return {column_count, row_count, std::move(net)};
}

} // namespace glim::demo
