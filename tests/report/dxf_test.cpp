#include "report/dxf.h"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <map>
#include <set>
#include <sstream>

using namespace glim;

namespace {

/// A reader of its own, written from the format's description alone: pairs of lines, a group code
/// and a value; entities begin at code 0. (DXF reference, release 12: group codes, sections.)
struct Entity {
    std::string type;
    std::multimap<int, std::string> groups;

    std::string text(int code) const
    {
        const auto found = groups.find(code);
        return found == groups.end() ? "" : found->second;
    }
    double number(int code) const { return std::strtod(text(code).c_str(), nullptr); }
};

struct ReadDxf {
    std::vector<std::string> sections;
    std::vector<Entity> tables, entities;
    bool ended = false;
};

ReadDxf read_dxf(const std::string& text)
{
    ReadDxf read;
    std::istringstream lines(text);
    std::string code_line, value, section;
    bool name_comes = false;
    while (std::getline(lines, code_line) && std::getline(lines, value)) {
        REQUIRE_FALSE(read.ended);
        std::size_t used = 0;
        const int code = std::stoi(code_line, &used);
        REQUIRE(used == code_line.size());
        if (code == 0 && value == "EOF")
            read.ended = true;
        else if (code == 0 && value == "SECTION")
            name_comes = true;
        else if (code == 0 && value == "ENDSEC")
            section.clear();
        else if (name_comes && code == 2) {
            section = value;
            read.sections.push_back(value);
            name_comes = false;
        } else if (section == "ENTITIES" || section == "TABLES") {
            auto& list = section == "ENTITIES" ? read.entities : read.tables;
            if (code == 0)
                list.push_back({value, {}});
            else {
                REQUIRE_FALSE(list.empty());
                list.back().groups.emplace(code, value);
            }
        }
    }
    return read;
}

} // namespace

TEST_CASE("an independent reader finds every line with its points and layer", "[report]")
{
    const std::vector<DxfLine> lines = {{"v-b-front, 250 ahead", {{1.5, -2}, {3, 4.12345}}, false},
                                        {"lens", {{0, 0}, {10, 0}, {10, 5}, {0, 5}}, true}};
    const std::vector<DxfLabel> labels = {{"lens", "the lens \xc3\xa4", {1, 2}}};
    const ReadDxf read = read_dxf(dxf_of(lines, labels));
    CHECK(read.ended);
    CHECK(read.sections == std::vector<std::string>{"HEADER", "TABLES", "ENTITIES"});

    std::set<std::string> layers;
    for (const Entity& e : read.tables)
        if (e.type == "LAYER")
            layers.insert(e.text(2));
    CHECK(layers == std::set<std::string>{"V-B-FRONT-250-AHEAD", "LENS"});

    std::vector<std::vector<Point2>> found;
    std::vector<bool> closed;
    bool open = false;
    for (const Entity& e : read.entities) {
        CHECK(layers.count(e.text(8)) == 1);
        if (e.type == "POLYLINE") {
            REQUIRE_FALSE(open);
            CHECK(e.text(66) == "1"); // vertices follow
            found.emplace_back();
            closed.push_back(e.number(70) == 1);
            open = true;
        } else if (e.type == "VERTEX") {
            REQUIRE(open);
            found.back().emplace_back(e.number(10), e.number(20));
        } else if (e.type == "SEQEND")
            open = false;
        else
            CHECK(e.type == "TEXT");
    }
    CHECK_FALSE(open);
    CHECK(closed == std::vector<bool>{false, true});
    REQUIRE(found.size() == lines.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        REQUIRE(found[i].size() == lines[i].points.size());
        for (std::size_t p = 0; p < found[i].size(); ++p)
            CHECK((found[i][p] - lines[i].points[p]).norm() < 1e-3);
    }
    CHECK(read.entities.back().type == "TEXT");
    CHECK(read.entities.back().text(1) == "the lens ??");
}

TEST_CASE("a drawing exchange file is ASCII and names its release", "[report]")
{
    const std::vector<DxfLine> lines = {{"\xc3\xbc", {{0, 0}, {1, 1}}, false}};
    const std::string text = dxf_of(lines, {});
    for (const char c : text)
        CHECK((c == '\n' || (c >= ' ' && c <= '~')));
    CHECK(text.find("$ACADVER\n  1\nAC1009\n") != std::string::npos);
}
