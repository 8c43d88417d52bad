#include "report/dxf.h"

#include "report/file_names.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

constexpr int decimals = 3;
constexpr int colours = 6; // of the format's own palette, beside white
/// The format's names of layers end here.
constexpr std::size_t longest_layer = 31;

std::string layer_name(const std::string& layer)
{
    std::string name = plain_name(layer).substr(0, longest_layer);
    for (char& c : name)
        c = c == '.' ? '-' : c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    return name;
}

/// The format is ASCII: anything else becomes "?".
std::string ascii(const std::string& words)
{
    std::string text = words;
    for (char& c : text)
        c = c < ' ' || c > '~' ? '?' : c;
    return text;
}

class DxfText {
public:
    void group(int code, const std::string& value)
    {
        const std::string number = std::to_string(code);
        text_ += std::string(number.size() < 3 ? 3 - number.size() : 0, ' ') + number + "\n" +
                 value + "\n";
    }
    void group(int code, int value) { group(code, std::to_string(value)); }
    void point(const Point2& p)
    {
        group(10, with_decimals(p.x(), decimals));
        group(20, with_decimals(p.y(), decimals));
        group(30, with_decimals(0, decimals));
    }
    void begin(const std::string& section)
    {
        group(0, "SECTION");
        group(2, section);
    }
    void end() { group(0, "ENDSEC"); }
    std::string take()
    {
        group(0, "EOF");
        return std::move(text_);
    }

private:
    std::string text_;
};

void put_header(DxfText& dxf)
{
    dxf.begin("HEADER");
    dxf.group(9, "$ACADVER");
    dxf.group(1, "AC1009");
    dxf.end();
}

void put_tables(DxfText& dxf, const std::vector<std::string>& layers)
{
    dxf.begin("TABLES");
    dxf.group(0, "TABLE");
    dxf.group(2, "LTYPE");
    dxf.group(70, 1);
    dxf.group(0, "LTYPE");
    dxf.group(2, "CONTINUOUS");
    dxf.group(70, 0);
    dxf.group(3, "Solid line");
    dxf.group(72, 65);
    dxf.group(73, 0);
    dxf.group(40, "0.0");
    dxf.group(0, "ENDTAB");
    dxf.group(0, "TABLE");
    dxf.group(2, "LAYER");
    dxf.group(70, static_cast<int>(layers.size()));
    for (std::size_t i = 0; i < layers.size(); ++i) {
        dxf.group(0, "LAYER");
        dxf.group(2, layers[i]);
        dxf.group(70, 0);
        dxf.group(62, static_cast<int>(i % colours) + 1);
        dxf.group(6, "CONTINUOUS");
    }
    dxf.group(0, "ENDTAB");
    dxf.end();
}

void put_line(DxfText& dxf, const DxfLine& line)
{
    const std::string layer = layer_name(line.layer);
    dxf.group(0, "POLYLINE");
    dxf.group(8, layer);
    dxf.group(66, 1);
    dxf.point(Point2::Zero());
    dxf.group(70, line.closed ? 1 : 0);
    for (const Point2& p : line.points) {
        dxf.group(0, "VERTEX");
        dxf.group(8, layer);
        dxf.point(p);
    }
    dxf.group(0, "SEQEND");
    dxf.group(8, layer);
}

void put_label(DxfText& dxf, const DxfLabel& label)
{
    dxf.group(0, "TEXT");
    dxf.group(8, layer_name(label.layer));
    dxf.point(label.at);
    dxf.group(40, with_decimals(label.height_mm, decimals));
    dxf.group(1, ascii(label.words));
}

} // namespace

std::string dxf_of(std::span<const DxfLine> lines, std::span<const DxfLabel> labels)
{
    std::vector<std::string> layers;
    const auto add = [&](const std::string& layer) {
        if (std::find(layers.begin(), layers.end(), layer_name(layer)) == layers.end())
            layers.push_back(layer_name(layer));
    };
    for (const DxfLine& line : lines)
        add(line.layer);
    for (const DxfLabel& label : labels)
        add(label.layer);
    DxfText dxf;
    put_header(dxf);
    put_tables(dxf, layers);
    dxf.begin("ENTITIES");
    for (const DxfLine& line : lines)
        put_line(dxf, line);
    for (const DxfLabel& label : labels)
        put_label(dxf, label);
    dxf.end();
    return dxf.take();
}

} // namespace glim
