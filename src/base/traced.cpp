#include "base/traced.h"

namespace toft {

namespace {

std::vector<int> joined(const std::vector<int>& a, const std::vector<int>& b) {
    std::vector<int> all = a;
    for (int id : b) {
        bool known = false;
        for (int seen : all) known = known || seen == id;
        if (!known) all.push_back(id);
    }
    return all;
}

}  // namespace

std::string bracketed(const Expression& e, Binding outer, bool strict) {
    const bool loose = strict ? e.binding <= outer : e.binding < outer;
    const bool bare = e.binding == Binding::atom || !loose;
    return bare ? e.text : "(" + e.text + ")";
}

Expression binary(const Expression& a, const Expression& b, const char* sign, Binding binding) {
    const bool commutes = sign[1] == '+' || std::string(sign) == " × ";
    return {
        bracketed(a, binding, binding == Binding::power) + sign + bracketed(b, binding, !commutes),
        binding, joined(a.inputs, b.inputs)};
}

Expression call(const char* function, const Expression& a) {
    return {std::string(function) + "(" + a.text + ")", Binding::atom, a.inputs};
}

Expression call(const char* function, const Expression& a, const Expression& b) {
    return {std::string(function) + "(" + a.text + "; " + b.text + ")", Binding::atom,
            joined(a.inputs, b.inputs)};
}

Expression postfix_square(const Expression& a) {
    return {bracketed(a, Binding::power, true) + "²", Binding::power, a.inputs};
}

Expression literal(double x) {
    const std::string text = significant(x, 9);
    return x < 0 ? Expression{text, Binding::sum, {}} : Expression{text, Binding::atom, {}};
}

}  // namespace toft
