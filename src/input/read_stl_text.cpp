#include "input/read_stl_text.h"

#include "geometry/weld.h"
#include "input/capped_complaints.h"
#include "input/mesh_parts.h"
#include "input/number_word.h"
#include "input/text_scanner.h"
#include "model/nearest_word.h"

#include <algorithm>

namespace glim {

namespace {

/// What has been opened and not closed yet.
enum class Inside { nothing, solid, facet, loop, facet_after_loop };

struct Step {
    std::string_view word;
    Inside before;          ///< where the word belongs
    Inside after;           ///< where it leads
    std::string_view where; ///< the place where it belongs, in words
};
constexpr std::array steps = {
    Step{"vertex", Inside::loop, Inside::loop, "between `outer loop` and `endloop`"},
    Step{"facet", Inside::solid, Inside::facet, "within a solid and outside other facets"},
    Step{"outer", Inside::facet, Inside::loop, "after `facet normal`"},
    Step{"endloop", Inside::loop, Inside::facet_after_loop, "after three `vertex`"},
    Step{"endfacet", Inside::facet_after_loop, Inside::solid, "after `endloop`"},
    Step{"solid", Inside::nothing, Inside::solid, "outside other solids"},
    Step{"endsolid", Inside::solid, Inside::nothing, "after the solid's last `endfacet`"},
};

char in_lower_case(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

/// `known` is in lower case.
bool is_word(std::string_view word, std::string_view known)
{
    return std::equal(word.begin(), word.end(), known.begin(), known.end(),
                      [](char a, char b) { return in_lower_case(a) == b; });
}

const Step* step_of(std::string_view word)
{
    const auto step = std::find_if(steps.begin(), steps.end(),
                                   [&](const Step& s) { return is_word(word, s.word); });
    return step == steps.end() ? nullptr : &*step;
}

std::vector<std::string> known_words()
{
    std::vector<std::string> words;
    words.reserve(steps.size());
    for (const Step& step : steps)
        words.emplace_back(step.word);
    return words;
}

class StlTextReader {
public:
    StlTextReader(std::string_view text, const std::string& name)
        : text_(text), name_(name), scanner_(text), complaints_(name)
    {
    }

    MeshFile read();

private:
    void read_statement();
    void take(const Step& step, std::string_view keyword);
    void read_vertex(std::string_view keyword);
    double number(std::string_view word);
    void end_loop(std::string_view keyword);
    void refuse_if_unfinished();
    void refuse_if_no_facet();
    void complain(const std::string& kind, std::string_view word, std::string what,
                  std::string remedy);

    std::string_view text_;
    const std::string& name_;
    TextScanner scanner_;
    CappedComplaints complaints_;
    MeshFile file_;
    MeshParts parts_;
    PointTable points_;
    Inside inside_ = Inside::nothing;
    Facet facet_{};
    std::size_t corners_ = 0; ///< read of the facet at hand
};

MeshFile StlTextReader::read()
{
    for (; !scanner_.at_end(); scanner_.end_line())
        read_statement();
    refuse_if_unfinished();
    refuse_if_no_facet();
    complaints_.throw_if_any();

    file_.format = "STL (ASCII)";
    file_.mesh.points = points_.take_points();
    file_.parts = parts_.take();
    return std::move(file_);
}

void StlTextReader::read_statement()
{
    const std::string_view keyword = scanner_.word();
    if (keyword.empty())
        return;
    const Step* const step = step_of(keyword);
    if (!step) {
        const auto nearest = nearest_word(shown(keyword), known_words());
        complain("unknown words", keyword, "`" + shown(keyword) + "` is no statement of ASCII STL",
                 nearest ? "did you mean `" + *nearest + "`?" : "export the mesh as STL again");
        return;
    }
    if (step->before != inside_)
        complain("words out of place", keyword, "`" + shown(keyword) + "` is out of place here",
                 "it belongs " + std::string(step->where) + "; export the mesh as STL again");
    // Even a word out of place leads on, so that one fault does not make a thousand.
    inside_ = step->after;
    take(*step, keyword);
}

void StlTextReader::take(const Step& step, std::string_view keyword)
{
    if (step.word == "solid")
        parts_.set(&MeshPart::group, std::string(scanner_.rest()));
    else if (step.word == "facet")
        corners_ = 0;
    else if (step.word == "vertex")
        read_vertex(keyword);
    else if (step.word == "endloop")
        end_loop(keyword);
}

void StlTextReader::read_vertex(std::string_view keyword)
{
    Point point = Point::Zero();
    std::size_t count = 0;
    for (auto word = scanner_.word(); !word.empty(); word = scanner_.word(), ++count) {
        const double value = number(word);
        file_.decimals = std::max(file_.decimals, significant_digits(word));
        if (count < 3)
            point[static_cast<Eigen::Index>(count)] = value;
    }
    if (count != 3)
        complain("corners with a wrong count of numbers", keyword,
                 "a corner has 3 numbers, and this has " + std::to_string(count),
                 "write x, y and z behind `vertex`");
    if (corners_ < 3)
        facet_[corners_] = points_.add(point);
    ++corners_;
}

double StlTextReader::number(std::string_view word)
{
    if (const std::optional<double> value = coordinate_in(word))
        return *value;
    NumberTrouble trouble = number_trouble(word);
    complain("numbers that cannot be used", word, trouble.what, trouble.remedy);
    return 0;
}

void StlTextReader::end_loop(std::string_view keyword)
{
    if (corners_ != 3)
        return complain("facets with a wrong count of corners", keyword,
                        "a facet has 3 corners, and this has " + std::to_string(corners_),
                        "export the mesh as STL again, cut into triangles");
    file_.mesh.facets.push_back(facet_);
    file_.part_of_facet.push_back(parts_.current());
    file_.points_in_file += 3;
    ++file_.polygons_in_file;
}

void StlTextReader::refuse_if_unfinished()
{
    if (inside_ == Inside::nothing)
        return;
    complain("", text_.substr(text_.size()),
             inside_ == Inside::solid ? "the file ends without `endsolid`"
                                      : "the file ends in the middle of a facet",
             "it was cut short: copy or export it again");
}

void StlTextReader::refuse_if_no_facet()
{
    if (!file_.mesh.facets.empty() || !complaints_.empty())
        return;
    complaints_.add("", [&] {
        return Complaint{{.file = name_, .line = 0, .column = 0, .byte = {}},
                         "there is no facet in this file",
                         "export the surfaces as a mesh"};
    });
}

void StlTextReader::complain(const std::string& kind, std::string_view word, std::string what,
                             std::string remedy)
{
    complaints_.add(kind, [&] {
        return Complaint{place_in(text_, name_, word), std::move(what), std::move(remedy)};
    });
}

} // namespace

bool begins_with_solid(std::string_view text)
{
    for (TextScanner scanner(text); !scanner.at_end(); scanner.end_line())
        if (const std::string_view word = scanner.word(); !word.empty())
            return is_word(word, "solid");
    return false;
}

MeshFile read_stl_text(std::string_view text, const std::string& name)
{
    return StlTextReader(text, name).read();
}

} // namespace glim
