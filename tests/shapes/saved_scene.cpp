#include "shapes/saved_scene.h"

#include <array>
#include <charconv>
#include <fstream>
#include <stdexcept>

namespace glim::shapes {

namespace {

std::string number(double value)
{
    std::array<char, 40> text;
    return {text.begin(), std::to_chars(text.begin(), text.end(), value).ptr};
}

void write(const std::filesystem::path& file, const std::string& text)
{
    std::ofstream out(file, std::ios::binary);
    out << text;
    if (!out.flush())
        throw std::runtime_error("cannot write " + file.string());
}

std::string obj_of(const RandomScene& scene)
{
    std::string text;
    std::size_t first = 1;
    for (const SceneBody& body : scene.bodies) {
        text += "o " + body.name + "\n";
        for (const Point& p : body.mesh.points)
            text += "v " + number(p.x()) + " " + number(p.y()) + " " + number(p.z()) + "\n";
        for (const Facet& f : body.mesh.facets)
            text += "f " + std::to_string(first + f[0]) + " " + std::to_string(first + f[1]) + " " +
                    std::to_string(first + f[2]) + "\n";
        first += body.mesh.points.size();
    }
    return text;
}

std::string surface_of(const SceneBody& body)
{
    const bool lit = body.part == BodyPart::lit;
    return "\n[[surface]]\nname = \"" + body.name + "\"\nmesh = \"scene\"\nselect = { object = \"" +
           body.name + "\" }\nrole = \"" + (lit ? "emitting" : "opaque") +
           "\"\norient = \"as-is\"\nmirror = \"" + (body.mirrored ? "yes" : "no") + "\"\n";
}

std::string names_of(const RandomScene& scene, BodyPart part)
{
    std::string list;
    for (const SceneBody& body : scene.bodies)
        if (body.part == part)
            list += (list.empty() ? "\"" : ", \"") + body.name + "\"";
    return "[" + list + "]";
}

std::string study_of_files(const RandomScene& scene, const std::string& title)
{
    std::string text = "format = 1\ntitle = \"" + title +
                       "\"\n\n[vehicle]\nforward = \"+x\"\nup = \"+z\"\nmodelled_side = \"both\"\n"
                       "\n[ground.design]\nheight = -800\n"
                       "\n[[mesh]]\nname = \"scene\"\nfile = \"scene.obj\"\nunit = \"mm\"\n"
                       "up = \"+z\"\nforward = \"+x\"\n";
    for (const SceneBody& body : scene.bodies)
        text += surface_of(body);
    text += "\n[[lamp]]\nname = \"lamp\"\nfunction = \"front_indicator\"\nside = \"left\"\npair = ";
    text += scene.twin ? "true" : "false";
    text += "\nemits = " + names_of(scene, BodyPart::lit) + "\n";
    if (const std::string names = names_of(scene, BodyPart::approved); names != "[]")
        text += "approved_with = " + names + "\n";
    return text + "\n[[check]]\nname = \"asked\"\ntable = \"asked\"\nrule = \"asked\"\n" +
           "lamp = \"lamp\"\n\n[sampling]\nfeature = " + number(in_mm(scene.feature)) +
           "\ntouch = " + number(in_mm(scene.touch)) + "\n";
}

std::string table_of(const RandomScene& scene, Area least)
{
    std::string points;
    for (const Bearing& b : scene.bearings)
        points += (points.empty() ? "[" : ", [") + number(in_degrees(b.h)) + ", " +
                  number(in_degrees(b.v)) + "]";
    return "format = 1\nregulation = \"our own, no regulation\"\n"
           "title = \"The directions of a random scene\"\n"
           "\n[[row]]\nid = \"asked\"\nprovenance = \"memory\"\n"
           "source = \"a random scene: the area that the definition gives\"\npoints = [" +
           points + "]\ncriterion = { kind = \"least_area\", mm2 = " + number(in_mm2(least)) +
           " }\n";
}

} // namespace

void save_as_study(const RandomScene& scene, const std::filesystem::path& folder,
                   const std::string& title, Area least)
{
    std::filesystem::create_directories(folder);
    write(folder / "scene.obj", obj_of(scene));
    write(folder / "study.toml", study_of_files(scene, title));
    write(folder / "asked.toml", table_of(scene, least));
}

} // namespace glim::shapes
