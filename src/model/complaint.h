#pragma once

#include <cstddef>
#include <exception>
#include <optional>
#include <string>
#include <vector>

namespace glim {

/// Where in the user's files something is. Text has a line, a binary file a byte; 0 means unknown.
struct Place {
    std::string file;
    int line = 0;
    int column = 0;
    std::optional<std::size_t> byte;

    /// `file:line:column`, `file, byte n`, or `file`.
    std::string words() const;
};

/// Where, what, and what to do about it: one sentence without a full stop each.
struct Complaint {
    Place place;
    std::string what;
    std::string remedy;
};

/// The user's input is wrong: exit code 2, and all that is wrong with it at once.
class InputError : public std::exception {
public:
    explicit InputError(std::vector<Complaint> complaints);
    const std::vector<Complaint>& complaints() const { return complaints_; }
    /// Every complaint on two lines: `place: what`, then the remedy, indented.
    const char* what() const noexcept override { return text_.c_str(); }

private:
    std::vector<Complaint> complaints_;
    std::string text_;
};

/// Throws InputError with this one complaint: for what makes the rest of a file unreadable.
[[noreturn]] void refuse(Place place, std::string what, std::string remedy);

/// Collects while reading, so that one run tells everything.
class Complaints {
public:
    void add(Place place, std::string what, std::string remedy);
    void add(const InputError& error);
    bool empty() const { return complaints_.empty(); }
    std::size_t size() const { return complaints_.size(); }
    /// Files in the order in which they first come up, each from its top to its end; complaints
    /// about one place stay in their order.
    void sort_by_place();
    /// Throws InputError with all complaints, in the order they were added or sorted into.
    void throw_if_any() const;

private:
    std::vector<Complaint> complaints_;
};

/// Something the user should know though the work goes on.
struct Warning {
    Place place;
    std::string what;
    std::string remedy; ///< may be empty
};

} // namespace glim
