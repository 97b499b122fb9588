#include "base/text.h"

#include <fmt/format.h>

#include <cmath>

namespace toft {

namespace {

struct NamedUnit {
    Dimension dimension;
    const char* name;
};

constexpr NamedUnit named_units[] = {
    {{.volt = 2, .ampere = -2}, "Ω"},
    {{.volt = 2, .ampere = -2, .metre = -2}, "Ω/m"},
    {{.volt = 2, .ampere = -2, .metre = 2}, "Ωm"},
    {{.volt = 2, .ampere = 2}, "VA"},
    {{.ampere = 4, .second = 2}, "A²s"},
    {{.ampere = 2, .second = 1, .section = -2}, "A√s/mm²"},
    {{.kelvin = -2}, "1/K"},
    {{.metre = -2, .pound = 2}, "£/m"},
};

std::string with_power(const char* unit, int halves) {
    if (halves == 2) return unit;
    if (halves == 4) return std::string(unit) + "²";
    if (halves % 2 == 0) return fmt::format("{}^{}", unit, halves / 2);
    return fmt::format("{}^{}", unit, halves / 2.0);
}

}  // namespace

std::string significant(double x, int digits) {
    if (x == 0 || !std::isfinite(x)) return fmt::format("{}", x == 0 ? 0.0 : x);
    const double size = std::fabs(x);
    if (size < 1e-6 || size >= 1e9) return fmt::format("{:.{}g}", x, digits);
    const int before = static_cast<int>(std::floor(std::log10(size))) + 1;
    std::string s = fmt::format("{:.{}f}", x, digits > before ? digits - before : 0);
    if (s.find('.') == std::string::npos) return s;
    while (s.back() == '0') s.pop_back();
    if (s.back() == '.') s.pop_back();
    return s;
}

std::string fixed(double x, int places) { return fmt::format("{:.{}f}", x, places); }

std::string unit_of(const Dimension& dimension) {
    for (const NamedUnit& unit : named_units) {
        if (unit.dimension == dimension) return unit.name;
    }
    std::string text;
    const auto add = [&](const char* unit, int halves) {
        if (halves == 0) return;
        if (!text.empty()) text += "·";
        text += with_power(unit, halves);
    };
    add("V", dimension.volt);
    add("A", dimension.ampere);
    add("s", dimension.second);
    add("m", dimension.metre);
    add("mm²", dimension.section);
    add("K", dimension.kelvin);
    add("£", dimension.pound);
    return text;
}

}  // namespace toft
