#include "support/formula.h"

#include <cctype>
#include <cmath>
#include <cstdlib>
#include <stdexcept>

namespace toft::support {

namespace {

class FormulaReader {
public:
    FormulaReader(const std::string& text, const FigureOf& figure_of)
        : text_(text), figure_of_(figure_of) {}

    double whole() {
        const double x = sum();
        if (at_ != text_.size()) fail("something follows the formula");
        return x;
    }

private:
    [[noreturn]] void fail(const std::string& says) const {
        throw std::runtime_error(says + " at byte " + std::to_string(at_) + " of: " + text_);
    }

    bool take(const std::string& word) {
        if (text_.compare(at_, word.size(), word) != 0) return false;
        at_ += word.size();
        return true;
    }
    void need(const std::string& word) {
        if (!take(word)) fail("expected " + word);
    }

    double sum() {
        double x = product();
        for (;;) {
            if (take(" + ")) {
                x += product();
            } else if (take(" − ")) {
                x -= product();
            } else {
                return x;
            }
        }
    }

    double product() {
        double x = raised();
        for (;;) {
            if (take(" × ")) {
                x *= raised();
            } else if (take(" / ")) {
                x /= raised();
            } else {
                return x;
            }
        }
    }

    double raised() {
        double x = atom();
        if (take("²")) return x * x;
        if (take("^")) return std::pow(x, atom());
        return x;
    }

    double pair(double (*choose)(double, double)) {
        const double a = sum();
        need("; ");
        const double b = sum();
        need(")");
        return choose(a, b);
    }

    double atom() {
        if (take("(")) {
            const double x = sum();
            need(")");
            return x;
        }
        if (take("√(")) {
            const double x = std::sqrt(sum());
            need(")");
            return x;
        }
        if (take("ln(")) {
            const double x = std::log(sum());
            need(")");
            return x;
        }
        if (take("penny(")) {
            const double pennies = sum() * 100;
            need(")");
            // Half a penny goes up, also where the printed digits fall short of it.
            return std::round(pennies + 1e-6) / 100;
        }
        if (take("min(")) return pair([](double a, double b) { return b < a ? b : a; });
        if (take("max(")) return pair([](double a, double b) { return a < b ? b : a; });
        return std::isalpha(static_cast<unsigned char>(peek())) ? symbol() : number();
    }

    char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }

    double symbol() {
        const std::size_t start = at_;
        while (std::isalnum(static_cast<unsigned char>(peek())) || peek() == '.') ++at_;
        return figure_of_(text_.substr(start, at_ - start));
    }

    double number() {
        const char* begin = text_.c_str() + at_;
        char* end = nullptr;
        const double x = std::strtod(begin, &end);
        if (end == begin || std::isspace(static_cast<unsigned char>(*begin)))
            fail("expected a number");
        at_ += static_cast<std::size_t>(end - begin);
        return x;
    }

    const std::string& text_;
    const FigureOf& figure_of_;
    std::size_t at_ = 0;
};

}  // namespace

double work_out_formula(const std::string& formula, const FigureOf& figure_of) {
    return FormulaReader(formula, figure_of).whole();
}

}  // namespace toft::support
