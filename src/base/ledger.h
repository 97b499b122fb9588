#pragma once
// One calculation, two depths. A method is a template over a ledger:
//
//   template <class L>
//   ValueIn<L, Ohms> hot(L& ledger, const ValueIn<L, Ohms>& r20, ...) {
//       return ledger.let({"R.hot", "resistance when hot"}, r20 * (1.0 + alpha * (t - t20)));
//   }
//
// With Silent the values are bare quantities and `let` is nothing: the search calls it millions of
// times. With Recording every value is Traced and each `let` writes a line of working: symbol,
// formula, the lines its figures come from, result, unit, source. Bodies stand in .cpp files and
// are instantiated for the two ledgers.

#include "base/citation.h"
#include "base/traced.h"

#include <string>
#include <vector>

namespace toft {

/// What a line of working is called. `symbol` must read as one word (letters, digits, dots); `part`
/// numbers it where the same quantity occurs for several legs ("Iz.2").
struct Name {
    const char* symbol;
    const char* meaning;
    int part = 0;
    const char* unit = "";    ///< for bare numbers that still have one, such as "%"
    const char* clause = "";  ///< where the formula stands
    const char* of = "";  ///< symbol of the figure it is a step to, where that tells it from others
};

/// How a line of working came about.
enum class Origin { table, site, computed };

/// One line of working.
struct Line {
    std::string symbol;
    std::string meaning;
    std::string formula;      ///< over the symbols of `inputs`; empty for a given figure
    std::vector<int> inputs;  ///< lines whose figures stand in the formula
    double value = 0;
    std::string unit;
    Origin origin = Origin::computed;
    const Citation* citation = nullptr;  ///< for table figures
    std::string from;  ///< for site figures how known; for computed ones the clause
    int place = 0;     ///< of the line among all of its ledger; `inputs` are such places
};

class Silent {
public:
    template <class T>
    using Value = T;
    static constexpr bool records = false;

    template <class T>
    constexpr T let(const Name&, const T& value) {
        return value;
    }
    template <class T>
    constexpr T table(const Name&, const Cited<T>& cited) {
        return cited.value;
    }
    template <class T>
    constexpr T stated(const Name&, const T& value, const char*) {
        return value;
    }
};

class Recording {
public:
    template <class T>
    using Value = Traced<T>;
    static constexpr bool records = true;

    /// A computed line.
    template <class T>
    Traced<T> let(const Name& name, const Traced<T>& value) {
        Line line = start(name, unit<T>(name), number_of(value.value));
        line.formula = value.expression.text;
        line.inputs = value.expression.inputs;
        line.from = name.clause;
        return traced(value.value, add(std::move(line)));
    }
    /// A figure read from the tables.
    template <class T>
    Traced<T> table(const Name& name, const Cited<T>& cited) {
        Line line = start(name, unit<T>(name), number_of(cited.value));
        line.origin = Origin::table;
        line.citation = cited.citation;
        return traced(cited.value, add(std::move(line)));
    }
    /// A figure of the survey or of the scheme; `from` says how it is known.
    template <class T>
    Traced<T> stated(const Name& name, const T& value, const char* from) {
        Line line = start(name, unit<T>(name), number_of(value));
        line.origin = Origin::site;
        line.from = from;
        return traced(value, add(std::move(line)));
    }

    const std::vector<Line>& lines() const { return lines_; }

    /// The lines that `expression` rests on, in order of writing.
    std::vector<Line> working(const Expression& expression) const;

private:
    template <class T>
    static std::string unit(const Name& name) {
        if constexpr (std::is_same_v<T, Celsius>) {
            return "°C";
        } else if constexpr (std::is_same_v<T, double>) {
            return name.unit;
        } else {
            return unit_of(T::dimension);
        }
    }
    static Line start(const Name& name, std::string unit, double value);
    Expression add(Line line);

    std::vector<Line> lines_;
};

template <class L, class T>
using ValueIn = typename L::template Value<T>;

}  // namespace toft
