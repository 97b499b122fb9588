#pragma once
// Works out a printed formula: the language that base/traced.h writes. Numbers, symbols with dots,
// + − × /, ^ and ², √( ), ln( ), penny( ) to the whole penny, min(a; b), max(a; b), brackets.
// Written apart from the code that writes formulas, so that each checks the other.

#include <functional>
#include <string>

namespace toft::support {

/// The figure of a symbol. Throws when it knows none.
using FigureOf = std::function<double(const std::string& symbol)>;

/// The result of `formula`. Throws std::runtime_error when it is not well formed.
double work_out_formula(const std::string& formula, const FigureOf& figure_of);

}  // namespace toft::support
