#pragma once

#include <cassert>
#include <compare>
#include <cstdint>
#include <numeric>
#include <string>

namespace music {

// An exact fraction in lowest terms with a positive denominator. Music here stays far below the
// range of 64 bits: readers refuse lengths whose terms exceed `largestTerm`.
class Rational {
public:
    static constexpr std::int64_t largestTerm = std::int64_t{1} << 30;

    constexpr Rational() = default;
    constexpr Rational(std::int64_t whole) : m_numerator(whole) {}
    constexpr Rational(std::int64_t numerator, std::int64_t denominator)
    {
        assert(denominator != 0);
        std::int64_t const sign = denominator < 0 ? -1 : 1;
        std::int64_t const common = std::gcd(numerator, denominator);
        m_numerator = sign * numerator / (common == 0 ? 1 : common);
        m_denominator = sign * denominator / (common == 0 ? 1 : common);
    }

    constexpr std::int64_t numerator() const { return m_numerator; }
    constexpr std::int64_t denominator() const { return m_denominator; }

    // Only for the border to seconds and millimetres.
    constexpr double toDouble() const
    {
        return static_cast<double>(m_numerator) / static_cast<double>(m_denominator);
    }

    friend constexpr bool operator==(Rational const&, Rational const&) = default;
    friend constexpr std::strong_ordering operator<=>(Rational const& a, Rational const& b)
    {
        return a.m_numerator * b.m_denominator <=> b.m_numerator * a.m_denominator;
    }
    friend constexpr Rational operator+(Rational a, Rational b)
    {
        return {a.m_numerator * b.m_denominator + b.m_numerator * a.m_denominator,
                a.m_denominator * b.m_denominator};
    }
    friend constexpr Rational operator-(Rational a, Rational b)
    {
        return {a.m_numerator * b.m_denominator - b.m_numerator * a.m_denominator,
                a.m_denominator * b.m_denominator};
    }
    friend constexpr Rational operator*(Rational a, Rational b)
    {
        return {a.m_numerator * b.m_numerator, a.m_denominator * b.m_denominator};
    }
    friend constexpr Rational operator/(Rational a, Rational b)
    {
        return {a.m_numerator * b.m_denominator, a.m_denominator * b.m_numerator};
    }
    constexpr Rational operator-() const { return {-m_numerator, m_denominator}; }
    constexpr Rational& operator+=(Rational other) { return *this = *this + other; }
    constexpr Rational& operator-=(Rational other) { return *this = *this - other; }

private:
    std::int64_t m_numerator = 0;
    std::int64_t m_denominator = 1;
};

// The largest whole number not above the fraction.
constexpr std::int64_t floorOf(Rational r)
{
    std::int64_t const quotient = r.numerator() / r.denominator();
    return r.numerator() % r.denominator() < 0 ? quotient - 1 : quotient;
}

// "3/8", "0", "2": the form of the plan file.
inline std::string text(Rational r)
{
    std::string out = std::to_string(r.numerator());
    if (r.denominator() != 1) out += '/' + std::to_string(r.denominator());
    return out;
}

} // namespace music
