#pragma once

#include "input/photometry_file.h"

namespace glim {

/// Takes the numbers of an LM-63 file one after the other: blanks, line ends and commas divide
/// them, and a record may go over as many lines as it likes.
class IesNumbers {
public:
    /// `numbers` must lie in the text of `file`; both must outlive it. `remedy_at_end` is for a
    /// file that ends too soon.
    IesNumbers(PhotometricText& file, std::string_view numbers, std::string remedy_at_end);

    /// The next number, called `what` in complaints. Refuses a file that ends before it. One that
    /// cannot be read is a complaint, and nothing.
    struct Number {
        std::optional<double> value;
        std::string_view word;
    };
    Number next(std::string_view what);
    /// So many, called alike; unreadable ones are 0 after their complaint.
    std::vector<WrittenNumber> next(std::size_t count, std::string_view what);
    /// A number without which nothing after it can be read: refuses the file if it is no whole
    /// number from 1 on, or if the text has not room for so many.
    std::size_t next_count(std::string_view what);
    /// A whole number from 1 to `most` without which nothing after it can be understood.
    std::size_t next_choice(std::string_view what, int most, const std::string& remedy);

    /// Whether the text is long enough to hold so many numbers still.
    bool may_hold(std::size_t count) const { return count <= left_.size() / 2 + 1; }
    /// Complains of numbers that are left over.
    void expect_end();

private:
    std::string_view next_word();
    std::string_view next_written(std::string_view what);
    void skip_to_word();

    PhotometricText& file_;
    std::string_view left_;
    std::string remedy_at_end_;
};

} // namespace glim
