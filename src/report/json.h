#pragma once

#include <concepts>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace glim {

/// One JSON value. Members of an object keep the order in which they were written.
///
///     const Json json = Json::Object{{"name", "across"}, {"areas_mm2", Json::Array{1.5, 2.0}}};
///     const std::string text = text_of(json);
class Json {
public:
    using Array = std::vector<Json>;
    using Member = std::pair<std::string, Json>;
    using Object = std::vector<Member>;
    using Value = std::variant<std::nullptr_t, bool, long long, double, std::string, Array, Object>;

    Json() = default; ///< null
    Json(std::nullptr_t) {}
    Json(std::same_as<bool> auto value) : value_(value) {}
    Json(std::integral auto value) requires(!std::same_as<decltype(value), bool>)
        : value_(static_cast<long long>(value))
    {
    }
    Json(double value) : value_(value) {}
    Json(const char* value) : value_(std::string(value)) {}
    Json(std::string_view value) : value_(std::string(value)) {}
    Json(std::string value) : value_(std::move(value)) {}
    Json(Array value) : value_(std::move(value)) {}
    Json(Object value) : value_(std::move(value)) {}

    const Value& value() const { return value_; }

private:
    Value value_ = nullptr;
};

/// UTF-8 with a line feed at the end: objects and arrays of objects are spread over lines, indented
/// by two; an array of plain values stands on one line. Bytes that are no UTF-8 become U+FFFD, -0
/// becomes 0. Throws std::logic_error for a number that is not finite: JSON has none such.
std::string text_of(const Json& json);

} // namespace glim
