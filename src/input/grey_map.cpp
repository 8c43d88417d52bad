#include "input/grey_map.h"

#include "model/complaint.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <memory>
#include <png.h>
#include <stdexcept>

namespace glim {

namespace {

constexpr std::array<unsigned char, 8> signature = {0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

/// What libpng says of a file that it cannot read.
struct PngTrouble : std::runtime_error {
    using std::runtime_error::runtime_error;
};

// libpng is C: an exception thrown from its error call passes through its frames, which hold
// nothing that has to be undone. It allows that in so many words, where it is built with unwinding,
// as Debian's is.
[[noreturn]] void on_error(png_structp, png_const_charp what) { throw PngTrouble(what); }
void on_warning(png_structp, png_const_charp) {}

class PngReader {
public:
    explicit PngReader(std::string_view bytes)
        : left_(bytes),
          png_(png_create_read_struct(PNG_LIBPNG_VER_STRING, nullptr, on_error, on_warning))
    {
        if (!png_)
            throw std::bad_alloc();
        info_ = png_create_info_struct(png_);
        png_set_read_fn(png_, this, read);
        png_set_user_limits(png_, most_pixels_across, most_pixels_across);
    }
    PngReader(const PngReader&) = delete;
    PngReader& operator=(const PngReader&) = delete;
    ~PngReader() { png_destroy_read_struct(&png_, &info_, nullptr); }

    /// Nothing if the picture has colours.
    std::unique_ptr<GreyMap> grey_map()
    {
        png_read_info(png_, info_);
        const int kind = png_get_color_type(png_, info_);
        if ((kind & (PNG_COLOR_MASK_COLOR | PNG_COLOR_MASK_PALETTE)) != 0)
            return nullptr;
        if (png_get_bit_depth(png_, info_) < 8)
            png_set_expand_gray_1_2_4_to_8(png_);
        png_set_strip_alpha(png_);
        png_set_interlace_handling(png_);
        png_read_update_info(png_, info_);
        return values();
    }

private:
    static void read(png_structp png, png_bytep to, std::size_t count)
    {
        auto& self = *static_cast<PngReader*>(png_get_io_ptr(png));
        if (self.left_.size() < count)
            png_error(png, "it ends too early");
        std::memcpy(to, self.left_.data(), count);
        self.left_.remove_prefix(count);
    }

    std::unique_ptr<GreyMap> values()
    {
        auto map = std::make_unique<GreyMap>();
        map->columns = png_get_image_width(png_, info_);
        map->rows = png_get_image_height(png_, info_);
        const std::size_t row_bytes = png_get_rowbytes(png_, info_);
        std::vector<png_byte> bytes(row_bytes * map->rows);
        std::vector<png_bytep> rows;
        for (std::size_t r = 0; r < map->rows; ++r)
            rows.push_back(bytes.data() + r * row_bytes);
        png_read_image(png_, rows.data());
        const bool wide = png_get_bit_depth(png_, info_) == 16;
        for (std::size_t i = 0; i < map->columns * map->rows; ++i)
            map->grey.push_back(wide ? static_cast<float>(bytes[2 * i] * 256 + bytes[2 * i + 1]) /
                                           65535
                                     : static_cast<float>(bytes[i]) / 255);
        return map;
    }

    std::string_view left_;
    png_structp png_;
    png_infop info_ = nullptr;
};

} // namespace

bool looks_like_png(std::string_view bytes)
{
    return bytes.size() >= signature.size() &&
           std::equal(signature.begin(), signature.end(), bytes.begin(),
                      [](unsigned char a, char b) { return a == static_cast<unsigned char>(b); });
}

GreyMap read_grey_png(std::string_view bytes, const std::string& name)
{
    const Place place{name, 0, 0, {}};
    try {
        PngReader reader(bytes);
        if (std::unique_ptr<GreyMap> map = reader.grey_map())
            return std::move(*map);
    } catch (const PngTrouble& trouble) {
        refuse(place, "this PNG file is damaged or too large: " + std::string(trouble.what()),
               "save it again, of at most 8192 pixels across");
    }
    refuse(place, "this picture has colours", "save it as grey values");
}

} // namespace glim
