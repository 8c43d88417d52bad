#include "input/obj_statements.h"

#include <algorithm>
#include <array>

namespace glim {

namespace {

struct Row {
    std::string_view word;
    ObjStatement statement;
};

// The commonest first, since they are looked for in this order.
constexpr std::array rows = {
    Row{"v", ObjStatement::point},
    Row{"f", ObjStatement::face},
    Row{"vn", ObjStatement::passed_over},
    Row{"vt", ObjStatement::passed_over},
    Row{"g", ObjStatement::group},
    Row{"o", ObjStatement::object},
    Row{"usemtl", ObjStatement::material},
    Row{"s", ObjStatement::passed_over},
    Row{"mtllib", ObjStatement::passed_over},
    Row{"l", ObjStatement::passed_over},
    Row{"p", ObjStatement::passed_over},
    // An old word for a face.
    Row{"fo", ObjStatement::face},
    // Curves and surfaces; the lines from cstype to end only describe them.
    Row{"surf", ObjStatement::curved_surface},
    Row{"bzp", ObjStatement::curved_surface},
    Row{"bsp", ObjStatement::curved_surface},
    Row{"cstype", ObjStatement::passed_over},
    Row{"deg", ObjStatement::passed_over},
    Row{"bmat", ObjStatement::passed_over},
    Row{"step", ObjStatement::passed_over},
    Row{"vp", ObjStatement::passed_over},
    Row{"curv", ObjStatement::passed_over},
    Row{"curv2", ObjStatement::passed_over},
    Row{"parm", ObjStatement::passed_over},
    Row{"trim", ObjStatement::passed_over},
    Row{"hole", ObjStatement::passed_over},
    Row{"scrv", ObjStatement::passed_over},
    Row{"sp", ObjStatement::passed_over},
    Row{"end", ObjStatement::passed_over},
    Row{"con", ObjStatement::passed_over},
    Row{"cdc", ObjStatement::passed_over},
    Row{"cdp", ObjStatement::passed_over},
    Row{"res", ObjStatement::passed_over},
    Row{"ctech", ObjStatement::passed_over},
    Row{"stech", ObjStatement::passed_over},
    // How it is to be drawn.
    Row{"mg", ObjStatement::passed_over},
    Row{"bevel", ObjStatement::passed_over},
    Row{"c_interp", ObjStatement::passed_over},
    Row{"d_interp", ObjStatement::passed_over},
    Row{"lod", ObjStatement::passed_over},
    Row{"maplib", ObjStatement::passed_over},
    Row{"usemap", ObjStatement::passed_over},
    Row{"shadow_obj", ObjStatement::passed_over},
    Row{"trace_obj", ObjStatement::passed_over},
    Row{"call", ObjStatement::other_file},
    Row{"csh", ObjStatement::other_file},
};

} // namespace

ObjStatement obj_statement(std::string_view word)
{
    const auto row =
        std::find_if(rows.begin(), rows.end(), [&](const Row& r) { return r.word == word; });
    return row == rows.end() ? ObjStatement::unknown : row->statement;
}

std::vector<std::string> obj_words()
{
    std::vector<std::string> words;
    words.reserve(rows.size());
    for (const Row& row : rows)
        words.emplace_back(row.word);
    return words;
}

} // namespace glim
