#include "report/json.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace glim {

namespace {

std::string scalar_text(const nlohmann::json& scalar)
{
    return scalar.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

bool is_plain(const Json& json)
{
    return !std::holds_alternative<Json::Array>(json.value()) &&
           !std::holds_alternative<Json::Object>(json.value());
}

class Writer {
public:
    std::string take() { return std::move(text_) + "\n"; }

    void write(const Json& json)
    {
        std::visit([this](const auto& value) { write_value(value); }, json.value());
    }

private:
    void write_value(std::nullptr_t) { text_ += "null"; }
    void write_value(bool value) { text_ += scalar_text(value); }
    void write_value(long long value) { text_ += scalar_text(value); }
    void write_value(const std::string& value) { text_ += scalar_text(value); }

    void write_value(double value)
    {
        if (!std::isfinite(value))
            throw std::logic_error("a number among the results is not finite");
        text_ += scalar_text(value == 0 ? 0.0 : value); // -0 == 0
    }

    void write_value(const Json::Array& array)
    {
        if (std::all_of(array.begin(), array.end(), is_plain))
            return write_on_one_line(array);
        write_lines('[', array, ']', [this](const Json& value) { write(value); });
    }

    void write_value(const Json::Object& object)
    {
        if (object.empty()) {
            text_ += "{}";
            return;
        }
        write_lines('{', object, '}', [this](const Json::Member& member) {
            text_ += scalar_text(member.first) + ": ";
            write(member.second);
        });
    }

    void write_on_one_line(const Json::Array& array)
    {
        text_ += '[';
        for (std::size_t i = 0; i < array.size(); ++i) {
            text_ += i == 0 ? "" : ", ";
            write(array[i]);
        }
        text_ += ']';
    }

    template <class Items, class WriteOne>
    void write_lines(char open, const Items& items, char close, const WriteOne& write_one)
    {
        text_ += open;
        indent_ += "  ";
        for (std::size_t i = 0; i < items.size(); ++i) {
            text_ += (i == 0 ? "\n" : ",\n") + indent_;
            write_one(items[i]);
        }
        indent_.resize(indent_.size() - 2);
        text_ += "\n" + indent_ + close;
    }

    std::string text_;
    std::string indent_;
};

} // namespace

std::string text_of(const Json& json)
{
    Writer writer;
    writer.write(json);
    return writer.take();
}

} // namespace glim
