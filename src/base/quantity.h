#pragma once
// Quantities that cannot be mixed up. A quantity is a number in the unit its type names; products
// and quotients carry their dimension, so volts divided by amperes are ohms and nothing else.
//
//   Ohms r = ohms_per_metre(0.00183) * metres(34);   // 0.06222 ohm
//   Volts u = amperes(22) * r;
//   r + u;                                            // does not compile
//
// Units are kept coherent (V, A, s, m, K; conductor sections in mm2 are a dimension of their own,
// as the trade treats them), so a printed formula gives the printed result with the printed
// figures.

#include <cmath>

namespace toft {

/// Exponents of a dimension, each counted in halves so that a square root stays exact.
struct Dimension {
    int volt = 0, ampere = 0, second = 0, metre = 0, section = 0, kelvin = 0, pound = 0;

    friend constexpr bool operator==(const Dimension& a, const Dimension& b) {
        return a.volt == b.volt && a.ampere == b.ampere && a.second == b.second &&
               a.metre == b.metre && a.section == b.section && a.kelvin == b.kelvin &&
               a.pound == b.pound;
    }
    friend constexpr Dimension operator+(const Dimension& a, const Dimension& b) {
        return {a.volt + b.volt,       a.ampere + b.ampere, a.second + b.second, a.metre + b.metre,
                a.section + b.section, a.kelvin + b.kelvin, a.pound + b.pound};
    }
    friend constexpr Dimension operator-(const Dimension& a, const Dimension& b) {
        return {a.volt - b.volt,       a.ampere - b.ampere, a.second - b.second, a.metre - b.metre,
                a.section - b.section, a.kelvin - b.kelvin, a.pound - b.pound};
    }
    friend constexpr Dimension halved(const Dimension& d) {
        return {d.volt / 2,    d.ampere / 2, d.second / 2, d.metre / 2,
                d.section / 2, d.kelvin / 2, d.pound / 2};
    }
};

template <Dimension D>
class Quantity;

namespace detail {
template <Dimension D>
struct Carrier {
    using Type = Quantity<D>;
};
template <>
struct Carrier<Dimension{}> {
    using Type = double;
};
}  // namespace detail

/// The type that carries dimension D: a Quantity, or a bare number where nothing is left.
template <Dimension D>
using Of = typename detail::Carrier<D>::Type;

template <Dimension D>
class Quantity {
public:
    static constexpr Dimension dimension = D;

    constexpr Quantity() = default;
    /// `value` in the coherent unit of D.
    explicit constexpr Quantity(double value) : value_(value) {}

    /// The number in the coherent unit of D.
    constexpr double number() const { return value_; }

    friend constexpr Quantity operator+(Quantity a, Quantity b) {
        return Quantity(a.value_ + b.value_);
    }
    friend constexpr Quantity operator-(Quantity a, Quantity b) {
        return Quantity(a.value_ - b.value_);
    }
    friend constexpr Quantity operator*(Quantity a, double f) { return Quantity(a.value_ * f); }
    friend constexpr Quantity operator*(double f, Quantity a) { return Quantity(a.value_ * f); }
    friend constexpr Quantity operator/(Quantity a, double f) { return Quantity(a.value_ / f); }
    constexpr Quantity& operator+=(Quantity b) {
        value_ += b.value_;
        return *this;
    }

    friend constexpr bool operator<(Quantity a, Quantity b) { return a.value_ < b.value_; }
    friend constexpr bool operator>(Quantity a, Quantity b) { return a.value_ > b.value_; }
    friend constexpr bool operator<=(Quantity a, Quantity b) { return a.value_ <= b.value_; }
    friend constexpr bool operator>=(Quantity a, Quantity b) { return a.value_ >= b.value_; }
    friend constexpr bool operator==(Quantity a, Quantity b) { return a.value_ == b.value_; }
    friend constexpr bool operator!=(Quantity a, Quantity b) { return a.value_ != b.value_; }

private:
    double value_ = 0;
};

template <Dimension A, Dimension B>
constexpr Of<A + B> operator*(Quantity<A> a, Quantity<B> b) {
    return Of<A + B>(a.number() * b.number());
}

template <Dimension A, Dimension B>
constexpr Of<A - B> operator/(Quantity<A> a, Quantity<B> b) {
    return Of<A - B>(a.number() / b.number());
}

template <Dimension A>
constexpr Of<Dimension{} - A> operator/(double f, Quantity<A> a) {
    return Of<Dimension{} - A>(f / a.number());
}

/// The number inside a quantity, in its coherent unit; a bare number is itself.
template <Dimension D>
constexpr double number_of(Quantity<D> q) {
    return q.number();
}
constexpr double number_of(double x) { return x; }

template <Dimension D>
constexpr auto squared(Quantity<D> q) {
    return q * q;
}
constexpr double squared(double x) { return x * x; }

template <Dimension D>
Of<halved(D)> root(Quantity<D> q) {
    static_assert(halved(D) + halved(D) == D, "only a square has a root");
    return Of<halved(D)>(std::sqrt(q.number()));
}
inline double root(double x) { return std::sqrt(x); }

template <Dimension D>
constexpr Quantity<D> least(Quantity<D> a, Quantity<D> b) {
    return b < a ? b : a;
}
constexpr double least(double a, double b) { return b < a ? b : a; }

template <Dimension D>
constexpr Quantity<D> most(Quantity<D> a, Quantity<D> b) {
    return a < b ? b : a;
}
constexpr double most(double a, double b) { return a < b ? b : a; }

inline double ln(double x) { return std::log(x); }
inline double power(double x, double y) { return std::pow(x, y); }

}  // namespace toft
