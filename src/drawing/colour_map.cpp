#include "drawing/colour_map.h"

#include "drawing/oklab.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string_view>

namespace glim {

namespace {

// Nunez, Anderton, Renslow: "Optimizing colormaps with consideration for color vision deficiency",
// PLOS ONE 13(7), 2018; its 256 colours as matplotlib 3.6.3 has them (CC0), rounded to bytes.
constexpr std::string_view cividis_hex =
    "00224e00234f00245100255300255400265600275800285900285b00295d002a5f002a61"
    "002b62002c64002c66002d68002e6a002e6c002f6d00306f003070003170003171013271"
    "0533710833700c34700f357012357014367016377018376f1a386f1c396f1e3a6f203a6f"
    "213b6e233c6e243c6e263d6e273e6e293f6e2a3f6d2b406d2d416d2e416d2f426d31436d"
    "32436d33446d34456c35456c36466c38476c39486c3a486c3b496c3c4a6c3d4a6c3e4b6c"
    "3f4c6c404c6c414d6c424e6c434e6c444f6c45506c46516c47516c48526c49536c4a536c"
    "4b546c4c556c4d556c4e566c4f576c50576c51586d52596d535a6d545a6d555b6d555c6d"
    "565c6d575d6d585e6d595e6e5a5f6e5b606e5c616e5d616e5e626e5e636f5f636f60646f"
    "61656f62656f636670646770656870656870666970676a71686a71696b716a6c716b6d72"
    "6c6d726c6e726d6f726e6f736f7073707173717274727274727374737475747475757575"
    "7676767777767777777878777979777a7a787b7a787c7b787d7c787e7c787e7d787f7e78"
    "807f78817f788280798381798482798582798683798784788885788985788a86788b8778"
    "8c88788d88788e89788f8a78908b78918b78928c78928d78938e78948e77958f77969077"
    "9791779892779992779a93769b94769c95769d95769e96769f9775a09875a19975a29975"
    "a39a74a49b74a59c74a69c74a79d73a89e73a99f73aaa073aba072aca172ada272aea371"
    "afa471b0a571b1a570b3a670b4a76fb5a86fb6a96fb7a96eb8aa6eb9ab6dbaac6dbbad6d"
    "bcae6cbdae6cbeaf6bbfb06bc0b16ac1b26ac2b369c3b369c4b468c5b568c6b667c7b767"
    "c8b866c9b965cbb965ccba64cdbb63cebc63cfbd62d0be62d1bf61d2c060d3c05fd4c15f"
    "d5c25ed6c35dd7c45cd9c55cdac65bdbc75adcc859ddc858dec958dfca57e0cb56e1cc55"
    "e2cd54e4ce53e5cf52e6d051e7d150e8d24fe9d34eead34cebd44bedd54aeed649efd748"
    "f0d846f1d945f2da44f3db42f5dc41f6dd3ff7de3ef8df3cf9e03afbe138fce236fde334"
    "fee434fee535fee636fee838";
constexpr int cividis_count = 256;
static_assert(cividis_hex.size() == 6 * cividis_count);

std::uint8_t hex_byte(std::size_t at)
{
    std::uint8_t byte = 0;
    std::from_chars(&cividis_hex[at], &cividis_hex[at] + 2, byte, 16);
    return byte;
}

// The ends have the same CIE lightness; the orange is as strong as sRGB holds there.
constexpr Oklab low_end{0.52, 0.0868, 0.1034};
constexpr Oklab zero{0.94, 0, 0};
constexpr Oklab high_end{0.507, -0.04, -0.115};

} // namespace

Colour cividis(double share)
{
    const double place = std::clamp(share, 0.0, 1.0) * (cividis_count - 1);
    const auto at = 6 * static_cast<std::size_t>(std::lround(place));
    return {hex_byte(at), hex_byte(at + 2), hex_byte(at + 4)};
}

Colour diverging(double share)
{
    const double s = std::clamp(share, -1.0, 1.0);
    return in_srgb(between(zero, s < 0 ? low_end : high_end, std::abs(s)));
}

} // namespace glim
