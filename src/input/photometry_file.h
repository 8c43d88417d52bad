#pragma once

#include "input/capped_complaints.h"
#include "model/photometry.h"

#include <string_view>

namespace glim {

/// A photometric file read, and what is odd about it though it can be read.
struct PhotometryFile {
    Photometry photometry;
    std::vector<Warning> warnings;
};

/// The text of a photometric file while it is read, with all that is to be said about it. Parts of
/// the text know by themselves where they stand.
class PhotometricText {
public:
    /// `text` and `name` must outlive it.
    PhotometricText(std::string_view text, const std::string& name)
        : text_(text), name_(name), complaints_(name)
    {
    }

    std::string_view text() const { return text_; }
    const std::string& name() const { return name_; }
    /// `part` must lie in the text.
    Place place_of(std::string_view part) const;

    /// `kind`, in the plural, as in CappedComplaints.
    void complain(const std::string& kind, std::string_view part, std::string what,
                  std::string remedy);
    /// Of the file as a whole.
    void complain(std::string what, std::string remedy);
    /// Of each `what` the first place is told, and how many more there are.
    void warn(std::string_view part, const std::string& what, std::string remedy);
    /// Throws all complaints and this last one.
    [[noreturn]] void refuse(std::string_view part, std::string what, std::string remedy);
    [[noreturn]] void refuse(std::string what, std::string remedy);

    void throw_if_any() const { complaints_.throw_if_any(); }
    bool has_complaints() const { return !complaints_.empty(); }
    std::vector<Warning> take_warnings();

private:
    std::string_view text_;
    const std::string& name_;
    CappedComplaints complaints_;
    std::vector<Warning> warnings_;
    std::map<std::string, std::size_t> times_warned_;
};

/// An angle or an intensity, and where it is written.
struct WrittenNumber {
    double value = 0;
    std::string_view word;
};

std::vector<Angle> angles_in(const std::vector<WrittenNumber>& numbers);

} // namespace glim
