#include "generator/obj_file.h"

#include <array>
#include <charconv>
#include <cmath>
#include <map>

namespace glim::demo {
namespace {

using Rounded = std::array<long, 3>; ///< thousandths of a millimetre

Rounded in_vehicle_frame(const Point& p)
{
    return {std::lround(p.x() * 1000), std::lround(-p.y() * 1000), std::lround(p.z() * 1000)};
}

/// Whole millimetres and three decimals, without going through floating point again.
std::string words(long thousandths)
{
    const long size = std::labs(thousandths);
    std::array<char, 24> digits{};
    const auto end = std::to_chars(digits.begin(), digits.end(), size).ptr;
    std::string text(digits.begin(), end);
    if (text.size() < 4)
        text.insert(0, 4 - text.size(), '0');
    text.insert(text.size() - 3, ".");
    return thousandths < 0 ? "-" + text : text;
}

class Writer {
public:
    void add(const Part& part)
    {
        text_ += "o " + part.name + "\ng " + part.name + "\nusemtl " + part.material + "\n";
        std::string faces;
        for (const Facet& f : part.mesh.facets)
            faces += face(part.mesh, f);
        text_ += points_ + faces;
        points_.clear();
    }
    std::string take() { return std::move(text_); }
    void say(const std::string& comment) { text_ += "# " + comment + "\n"; }

private:
    std::string face(const TriangleMesh& mesh, const Facet& f)
    {
        // Reversed, because y = -w mirrors.
        const int a = number(mesh.points[f[0]]);
        const int b = number(mesh.points[f[2]]);
        const int c = number(mesh.points[f[1]]);
        if (a == b || b == c || c == a)
            return {};
        return "f " + std::to_string(a) + " " + std::to_string(b) + " " + std::to_string(c) + "\n";
    }

    int number(const Point& p)
    {
        const Rounded r = in_vehicle_frame(p);
        const auto [found, is_new] = numbers_.try_emplace(r, static_cast<int>(numbers_.size()) + 1);
        if (is_new)
            points_ += "v " + words(r[0]) + " " + words(r[1]) + " " + words(r[2]) + "\n";
        return found->second;
    }

    std::string text_;
    std::string points_; ///< of the part that is being added
    std::map<Rounded, int> numbers_;
};

} // namespace

std::string obj_text(const std::string& title, const std::vector<Part>& parts)
{
    Writer writer;
    writer.say(title);
    writer.say("millimetres; x rearward, y to the right, z up; left half of the vehicle");
    for (const Part& part : parts)
        writer.add(part);
    return writer.take();
}

} // namespace glim::demo
