#pragma once

#include "input/photometry_file.h"
#include "input/text_scanner.h"

namespace glim {

/// Takes the lines of a EULUMDAT file one after the other: each holds one value, text or number,
/// and a decimal comma is as good as a point. `what` calls the value in complaints.
class LdtLines {
public:
    explicit LdtLines(PhotometricText& file) : file_(file), scanner_(file.text()) {}

    /// The next line without the blanks around it. Refuses a file that ends before it.
    std::string_view text(std::string_view what);
    /// One that cannot be read is a complaint, and 0.
    WrittenNumber number(std::string_view what);
    WrittenNumber positive(std::string_view what);
    WrittenNumber at_least_zero(std::string_view what);
    std::vector<WrittenNumber> numbers(std::size_t count, std::string_view what);
    /// A whole number within these limits, without which nothing behind it can be read: refuses the
    /// file otherwise.
    struct Needed {
        int value;
        std::string_view word;
    };
    Needed needed(std::string_view what, int least, int most);
    /// Complains of lines that are left over.
    void expect_end();

private:
    std::optional<double> readable(std::string_view line, std::string_view what);

    PhotometricText& file_;
    TextScanner scanner_;
};

} // namespace glim
