#include "report/toml_text.h"

#include "words/numbers.h"

namespace glim {

std::string toml_text(const std::string& text)
{
    constexpr std::string_view hex = "0123456789ABCDEF";
    std::string quoted = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\')
            quoted += std::string("\\") + c;
        else if (byte < 0x20U || byte == 0x7FU)
            quoted += std::string("\\u00") + hex[byte >> 4U] + hex[byte & 0xFU];
        else
            quoted += c;
    }
    return quoted + "\"";
}

std::string toml_point(const Vector& v)
{
    return "[" + shortest(v.x()) + ", " + shortest(v.y()) + ", " + shortest(v.z()) + "]";
}

std::string toml_list(const std::vector<std::string>& names)
{
    std::string list;
    for (const std::string& name : names)
        list += (list.empty() ? "" : ", ") + toml_text(name);
    return "[" + list + "]";
}

} // namespace glim
