#include "base/traced.h"

#include "base/ledger.h"
#include "support/formula.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <stdexcept>

namespace toft {
namespace {

Traced<double> symbol(const std::string& name, double value) {
    return traced(value, Expression{name, Binding::atom, {}});
}

const Traced<double> a = symbol("a", 7);
const Traced<double> b = symbol("b", 3);
const Traced<double> c = symbol("c", 2);

TEST(Traced, BracketsOnlyWhatNeedsThem) {
    EXPECT_EQ((a + b * c).expression.text, "a + b × c");
    EXPECT_EQ(((a + b) * c).expression.text, "(a + b) × c");
    EXPECT_EQ((a - (b - c)).expression.text, "a − (b − c)");
    EXPECT_EQ((a - b - c).expression.text, "a − b − c");
    EXPECT_EQ((a / (b * c)).expression.text, "a / (b × c)");
    EXPECT_EQ((a / b / c).expression.text, "a / b / c");
    EXPECT_EQ(squared(a + b).expression.text, "(a + b)²");
    EXPECT_EQ(squared(squared(a)).expression.text, "(a²)²");
    EXPECT_EQ(root(squared(a) + squared(b)).expression.text, "√(a² + b²)");
    EXPECT_EQ(power(a / b, c + 1.0).expression.text, "(a / b)^(c + 1)");
    EXPECT_EQ(least(a, most(b, c)).expression.text, "min(a; max(b; c))");
    EXPECT_EQ((8.0 * ln(a) - 1.0).expression.text, "8 × ln(a) − 1");
}

TEST(Traced, ANegativeNumberIsBracketedWhereASignStandsBeforeIt) {
    EXPECT_EQ((a - -2.0).expression.text, "a − (-2)");
    EXPECT_EQ((a * -2.0).expression.text, "a × (-2)");
}

TEST(Traced, CarriesTheUnitOfItsValue) {
    const Traced<Volts> u = traced(volts(230), Expression{"U0", Binding::atom, {}});
    const Traced<Ohms> z = traced(ohms(2), Expression{"Zs", Binding::atom, {}});
    const Traced<Amperes> i = 0.95 * u / z;
    EXPECT_EQ(i.value, amperes(0.95 * 230 / 2));
    EXPECT_EQ(i.expression.text, "0.95 × U0 / Zs");
}

TEST(Traced, NamesEachInputOnce) {
    Recording ledger;
    const auto x = ledger.stated({"x", "a figure"}, 2.0, "survey");
    EXPECT_EQ((x * x + x).expression.inputs, std::vector<int>{0});
}

/// A random formula over a, b and c, of at most `depth` operations one inside the other.
Traced<double> any_formula(int depth) {
    if (depth == 0) return *rc::gen::element(a, b, c);
    const auto x = any_formula(depth - 1);
    const auto y = any_formula(depth - 1);
    const double number = *rc::gen::inRange(-50, 50) / 4.0;
    switch (*rc::gen::inRange(0, 10)) {
        case 0:
            return x + y;
        case 1:
            return x - y;
        case 2:
            return x * y;
        case 3:
            return x / y;
        case 4:
            return squared(x);
        case 5:
            return root(squared(x) + squared(y));
        case 6:
            return least(x, y);
        case 7:
            return most(x, number);
        case 8:
            return number - x;
        default:
            return ln(squared(x) + 1.0) * number;
    }
}

RC_GTEST_PROP(Traced, TheFormulaIsTheCodeThatRan, ()) {
    const auto formula = any_formula(*rc::gen::inRange(1, 5));
    RC_PRE(std::isfinite(formula.value));
    const double read =
        support::work_out_formula(formula.expression.text, [](const std::string& s) {
            return s == "a" ? 7.0 : s == "b" ? 3.0 : 2.0;
        });
    RC_LOG() << formula.expression.text;
    RC_ASSERT(support::agree(read, formula.value, 1e-9));
}

TEST(FormulaReader, RefusesWhatIsNotAFormula) {
    const auto any = [](const std::string&) { return 1.0; };
    for (const char* bad : {"", "a +", "(a", "a b", "min(a)", "a × × b", "√a", "2 +3", "a;b"}) {
        EXPECT_THROW(support::work_out_formula(bad, any), std::runtime_error) << bad;
    }
    EXPECT_EQ(support::work_out_formula("1.5e-3 × 2", any), 0.003);
}

}  // namespace
}  // namespace toft
