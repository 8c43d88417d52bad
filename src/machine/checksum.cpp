#include "machine/checksum.h"

#include <array>
#include <cstdint>
#include <fstream>
#include <system_error>

namespace glim {

namespace {

class Checksum {
public:
    void add(std::string_view bytes)
    {
        constexpr std::uint64_t prime = 0x100000001b3;
        for (const char c : bytes)
            sum_ = (sum_ ^ static_cast<unsigned char>(c)) * prime;
    }

    std::string digits() const
    {
        std::string text(16, '0');
        for (std::size_t i = 0; i < text.size(); ++i)
            text[i] = "0123456789abcdef"[(sum_ >> (60 - 4 * i)) & 15];
        return text;
    }

private:
    std::uint64_t sum_ = 0xcbf29ce484222325; // the offset basis
};

} // namespace

std::string checksum_of(std::string_view bytes)
{
    Checksum sum;
    sum.add(bytes);
    return sum.digits();
}

std::string checksum_of_file(const std::filesystem::path& file)
{
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        throw std::system_error(errno, std::generic_category(), "cannot read " + file.string());
    Checksum sum;
    std::array<char, 1 << 16> piece{};
    while (stream.read(piece.data(), piece.size()) || stream.gcount() > 0)
        sum.add({piece.data(), static_cast<std::size_t>(stream.gcount())});
    return sum.digits();
}

} // namespace glim
