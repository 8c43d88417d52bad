#include "input/ply_body.h"

#include "input/number_word.h"
#include "input/text_scanner.h"

#include <bit>
#include <charconv>
#include <cmath>

namespace glim {

namespace {

constexpr const char* cut_short = "the file was cut short: copy or export it again";

class PlyText final : public PlyBody {
public:
    PlyText(std::string_view bytes, std::size_t header, const std::string& name,
            CappedComplaints& complaints)
        : text_(bytes), name_(name), complaints_(complaints), scanner_(bytes.substr(header))
    {
    }

    void begin_item(std::function<std::string()> words) override
    {
        words_ = std::move(words);
        gave_up_ = false;
        TextScanner ahead = scanner_;
        while (!ahead.at_end() && ahead.word().empty()) {
            ahead.end_line();
            scanner_ = ahead;
        }
        if (scanner_.at_end())
            complaints_.refuse(
                {Place{name_, 0, 0, {}}, "the file ends before " + words_(), cut_short});
    }

    void end_item() override
    {
        const std::string_view word = scanner_.word();
        if (!word.empty() && !gave_up_)
            complain("lines with too many numbers", word,
                     "`" + shown(word) + "` is more than the header says of " + words_(),
                     "write one point or face a line, with the properties of the header");
        scanner_.end_line();
    }

    void give_up_item() override { gave_up_ = true; }
    bool gave_up() const override { return gave_up_; }

    void end() override
    {
        for (; !scanner_.at_end(); scanner_.end_line())
            if (const std::string_view word = scanner_.word(); !word.empty())
                return complain("", word, "there is more in the file than its header counts",
                                "export the mesh as PLY again");
    }

    std::optional<double> coordinate(const PlyType&) override
    {
        const std::optional<std::string_view> word = next();
        if (!word)
            return std::nullopt;
        const std::optional<double> value = coordinate_in(*word);
        if (!value) {
            const NumberTrouble trouble = number_trouble(*word);
            complain("numbers that cannot be used", *word, trouble.what, trouble.remedy);
        }
        return value;
    }

    std::optional<std::int64_t> whole_number(const PlyType&) override
    {
        const std::optional<std::string_view> word = next();
        if (!word)
            return std::nullopt;
        std::int64_t value = 0;
        const char* const last = word->data() + word->size();
        const auto [stop, error] = std::from_chars(word->data(), last, value);
        if (stop == last && error == std::errc{})
            return value;
        complain("numbers that cannot be used", *word,
                 "`" + shown(*word) + "` is not a whole number", "export the mesh as PLY again");
        return std::nullopt;
    }

    void pass_over(const PlyType&) override { next(); }
    Place place() const override { return place_in(text_, name_, last_); }

private:
    std::optional<std::string_view> next()
    {
        last_ = scanner_.word();
        if (!last_.empty())
            return last_;
        if (!gave_up_)
            complain("lines with too few numbers", last_, words_() + " lacks numbers",
                     is_on_unfinished_line(text_, last_)
                         ? cut_short
                         : "write all the properties of the header on one line");
        gave_up_ = true;
        return std::nullopt;
    }

    void complain(const std::string& kind, std::string_view word, std::string what,
                  std::string remedy)
    {
        complaints_.add(kind, [&] {
            return Complaint{place_in(text_, name_, word), std::move(what), std::move(remedy)};
        });
    }

    std::string_view text_;
    const std::string& name_;
    CappedComplaints& complaints_;
    TextScanner scanner_;
    std::function<std::string()> words_;
    std::string_view last_;
    bool gave_up_ = false; ///< one complaint a line is enough
};

std::string written(double value)
{
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value);
    return {text.data(), end.ptr};
}

class PlyBinary final : public PlyBody {
public:
    PlyBinary(std::string_view bytes, const PlyHeader& header, const std::string& name,
              CappedComplaints& complaints)
        : bytes_(bytes), is_big_(header.encoding == PlyEncoding::big_endian), name_(name),
          complaints_(complaints), next_(header.size)
    {
    }

    void begin_item(std::function<std::string()> words) override
    {
        words_ = std::move(words);
        gave_up_ = false;
    }
    void end_item() override {}
    void give_up_item() override { gave_up_ = true; }
    bool gave_up() const override { return gave_up_; }

    void end() override
    {
        if (next_ == bytes_.size())
            return;
        complaints_.add("", [&] {
            return Complaint{place_at(next_),
                             std::to_string(bytes_.size() - next_) +
                                 " bytes follow what the header counts",
                             "there is more in the file than it says: export it again"};
        });
    }

    std::optional<double> coordinate(const PlyType& type) override
    {
        const double value = number(type);
        if (std::abs(value) <= largest_coordinate) // "not a number" compares with nothing
            return value;
        complaints_.add("coordinates that cannot be used", [&] {
            const bool finite = std::isfinite(value);
            return Complaint{place(),
                             "the coordinate " + written(value) +
                                 (finite ? " is too large" : " is not a finite number"),
                             finite ? "bring the mesh within 1e9 of its origin"
                                    : "repair the mesh where it comes from"};
        });
        return std::nullopt;
    }

    std::optional<std::int64_t> whole_number(const PlyType& type) override
    {
        return static_cast<std::int64_t>(number(type));
    }

    void pass_over(const PlyType& type) override { bits(type.size); }
    Place place() const override { return place_at(last_); }

private:
    /// The next number; four bytes hold any whole number that PLY knows.
    double number(const PlyType& type)
    {
        const std::uint64_t raw = bits(type.size);
        if (!type.is_whole)
            return type.size == 4 ? double{std::bit_cast<float>(static_cast<std::uint32_t>(raw))}
                                  : std::bit_cast<double>(raw);
        const double value = static_cast<double>(raw);
        const double range = static_cast<double>(std::uint64_t{1} << (8 * type.size));
        return type.is_signed && value >= range / 2 ? value - range : value;
    }

    std::uint64_t bits(std::size_t size)
    {
        last_ = next_;
        if (bytes_.size() - next_ < size)
            complaints_.refuse(
                {place_at(bytes_.size()), "the file ends within " + words_(), cut_short});
        std::uint64_t value = 0;
        for (std::size_t i = 0; i < size; ++i) {
            const std::size_t at = next_ + (is_big_ ? i : size - 1 - i);
            value = value << 8U | static_cast<unsigned char>(bytes_[at]);
        }
        next_ += size;
        return value;
    }

    Place place_at(std::size_t byte) const
    {
        return {.file = name_, .line = 0, .column = 0, .byte = byte};
    }

    std::string_view bytes_;
    bool is_big_;
    const std::string& name_;
    CappedComplaints& complaints_;
    std::function<std::string()> words_;
    std::size_t next_;
    std::size_t last_ = 0;
    bool gave_up_ = false;
};

} // namespace

std::unique_ptr<PlyBody> PlyBody::of(std::string_view bytes, const PlyHeader& header,
                                     const std::string& name, CappedComplaints& complaints)
{
    if (header.encoding == PlyEncoding::text)
        return std::make_unique<PlyText>(bytes, header.size, name, complaints);
    return std::make_unique<PlyBinary>(bytes, header, name, complaints);
}

} // namespace glim
