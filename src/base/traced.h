#pragma once
// A value that remembers how it was made. In the recording depth of a calculation every quantity is
// Traced: arithmetic on it also builds the formula, so the printed formula is the code that ran.

#include "base/temperature.h"
#include "base/text.h"
#include "base/units.h"

#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace toft {

/// How tightly the outermost operation of an expression binds; a looser operand gets brackets.
enum class Binding { sum, product, power, atom };

/// The text of a formula over symbols, and the ledger lines whose symbols stand in it.
struct Expression {
    std::string text;
    Binding binding = Binding::atom;
    std::vector<int> inputs;
};

/// Text of `e` as an operand of an operation that binds at `outer`; `strict` also brackets equals.
std::string bracketed(const Expression& e, Binding outer, bool strict);

Expression binary(const Expression& a, const Expression& b, const char* sign, Binding binding);
Expression call(const char* function, const Expression& a);
Expression call(const char* function, const Expression& a, const Expression& b);
Expression postfix_square(const Expression& a);
Expression literal(double x);

template <class T>
struct Traced {
    T value{};
    Expression expression;
};

template <class T>
struct IsTraced : std::false_type {};
template <class T>
struct IsTraced<Traced<T>> : std::true_type {};

/// The bare value, whichever depth is running. For branching and for storing results.
template <class T>
constexpr const T& plain(const Traced<T>& t) {
    return t.value;
}
template <class T>
requires(!IsTraced<T>::value) constexpr const T& plain(const T& t) { return t; }

template <class T>
const Expression& expression_of(const Traced<T>& t) {
    return t.expression;
}
template <class T>
requires(!IsTraced<T>::value) Expression expression_of(const T& t) { return literal(number_of(t)); }

template <class T>
Traced<T> traced(T value, Expression expression) {
    return Traced<T>{value, std::move(expression)};
}

template <class A, class B>
concept EitherTraced = IsTraced<A>::value || IsTraced<B>::value;

template <class A, class B>
requires EitherTraced<A, B>
auto operator+(const A& a, const B& b) {
    return traced(plain(a) + plain(b),
                  binary(expression_of(a), expression_of(b), " + ", Binding::sum));
}

template <class A, class B>
requires EitherTraced<A, B>
auto operator-(const A& a, const B& b) {
    return traced(plain(a) - plain(b),
                  binary(expression_of(a), expression_of(b), " − ", Binding::sum));
}

template <class A, class B>
requires EitherTraced<A, B>
auto operator*(const A& a, const B& b) {
    return traced(plain(a) * plain(b),
                  binary(expression_of(a), expression_of(b), " × ", Binding::product));
}

template <class A, class B>
requires EitherTraced<A, B>
auto operator/(const A& a, const B& b) {
    return traced(plain(a) / plain(b),
                  binary(expression_of(a), expression_of(b), " / ", Binding::product));
}

template <class T>
auto squared(const Traced<T>& a) {
    return traced(squared(a.value), postfix_square(a.expression));
}

template <class T>
auto root(const Traced<T>& a) {
    return traced(root(a.value), call("√", a.expression));
}

inline Traced<double> ln(const Traced<double>& a) {
    return traced(ln(a.value), call("ln", a.expression));
}

inline Traced<Pounds> penny(const Traced<Pounds>& a) {
    return traced(penny(a.value), call("penny", a.expression));
}

template <class A, class B>
requires EitherTraced<A, B> Traced<double> power(const A& a, const B& b) {
    return traced(power(plain(a), plain(b)),
                  binary(expression_of(a), expression_of(b), "^", Binding::power));
}

template <class A, class B>
requires EitherTraced<A, B>
auto least(const A& a, const B& b) {
    return traced(least(plain(a), plain(b)), call("min", expression_of(a), expression_of(b)));
}

template <class A, class B>
requires EitherTraced<A, B>
auto most(const A& a, const B& b) {
    return traced(most(plain(a), plain(b)), call("max", expression_of(a), expression_of(b)));
}

}  // namespace toft
