#pragma once

#include "model/complaint.h"

#include <functional>
#include <map>
#include <string>

namespace glim {

/// Of each kind so many are told in full.
inline constexpr std::size_t most_complaints_of_a_kind = 20;

/// Complaints about one file. A damaged one may give a million: of each kind the first 20 are told
/// in full, the others as a number at the end.
class CappedComplaints {
public:
    explicit CappedComplaints(std::string file) : file_(std::move(file)) {}

    /// `kind`, in the plural, tells what the surplus is: "numbers that cannot be read". `make` is
    /// called only if the complaint is among those told, for it may be slow to find the place.
    void add(const std::string& kind, const std::function<Complaint()>& make);
    bool empty() const { return told_.empty(); }
    /// Adds `last` and throws them all: for what makes the rest of the file unreadable.
    [[noreturn]] void refuse(Complaint last);
    /// Throws InputError if there are any, in the order in which they were added.
    void throw_if_any() const;

private:
    std::string file_;
    Complaints told_;
    std::map<std::string, std::size_t> count_of_kind_;
};

} // namespace glim
