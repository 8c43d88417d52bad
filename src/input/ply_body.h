#pragma once

#include "input/capped_complaints.h"
#include "input/ply_header.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>

namespace glim {

/// The numbers after a PLY header, one item (a point, a face) after the other, as text or binary.
/// What is wrong with a number becomes a complaint and gives nothing; the items after it are read
/// all the same. A file that ends too early cannot be read on: that throws InputError.
class PlyBody {
public:
    /// `bytes` is the whole file; it, `name` and `complaints` must outlive the body.
    static std::unique_ptr<PlyBody> of(std::string_view bytes, const PlyHeader& header,
                                       const std::string& name, CappedComplaints& complaints);
    virtual ~PlyBody() = default;

    /// `words` names it in complaints: "point 7".
    virtual void begin_item(std::function<std::string()> words) = 0;
    virtual void end_item() = 0;
    /// Nothing more of this item can be trusted; where items are lines, the rest is passed over.
    virtual void give_up_item() = 0;
    /// Whether it was given up, also because its line is too short.
    virtual bool gave_up() const = 0;
    /// Complains if anything follows the last item.
    virtual void end() = 0;

    virtual std::optional<double> coordinate(const PlyType& type) = 0;
    virtual std::optional<std::int64_t> whole_number(const PlyType& type) = 0;
    virtual void pass_over(const PlyType& type) = 0;
    /// The number read last.
    virtual Place place() const = 0;
};

} // namespace glim
