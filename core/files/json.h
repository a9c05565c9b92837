#pragma once

// The one door to the JSON library.
#include <nlohmann/json.hpp>

#include <cmath>
#include <concepts>
#include <cstdint>
#include <limits>
#include <utility>

// The library hands on whole numbers unchecked: 1e300 or 5000000000 read as an int is anything. Here
// what does not fit is a fault of the file.
namespace nlohmann {

template<typename Number>
    requires(std::integral<Number> && !std::same_as<Number, bool>)
struct adl_serializer<Number, void> {
    template<typename Json>
    static void to_json(Json& json, Number number)
    {
        nlohmann::to_json(json, number);
    }

    template<typename Json>
    static void from_json(Json const& json, Number& number)
    {
        if (!fits(json))
            throw detail::out_of_range::create(406, "a number is too large", &json);
        nlohmann::from_json(json, number);
    }

private:
    template<typename Json>
    static bool fits(Json const& json)
    {
        if (json.is_number_float()) {
            double const value =
                *json.template get_ptr<typename Json::number_float_t const*>();
            double const beyond = std::ldexp(1.0, std::numeric_limits<Number>::digits);
            return value < beyond && value >= (std::is_signed_v<Number> ? -beyond : 0.0);
        }
        if (json.is_number_unsigned())
            return std::in_range<Number>(
                *json.template get_ptr<typename Json::number_unsigned_t const*>());
        if (json.is_number_integer())
            return std::in_range<Number>(
                *json.template get_ptr<typename Json::number_integer_t const*>());
        return true;
    }
};

} // namespace nlohmann

namespace files {

// Members stay in the order in which they are written.
using Json = nlohmann::ordered_json;

} // namespace files
