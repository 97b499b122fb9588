#include "support/case_file.h"

#include "base/text.h"

#include <cmath>
#include <ostream>
#include <sstream>
#include <stdexcept>

namespace toft::support {

namespace {

constexpr double refused_within = 0.01;

/// Units of the case files, each in the coherent unit of its kind.
const std::map<std::string, double>& units() {
    static const std::map<std::string, double> known{
        {"ohm", 1},         {"mohm", 1e-3}, {"ohm/m", 1}, {"mohm/m", 1e-3}, {"ohm/km", 1e-3},
        {"mV/A/m", 1e-3},   {"ohm.m", 1},   {"m", 1},     {"mm", 1e-3},     {"mm2", 1},
        {"A", 1},           {"kA", 1e3},    {"mA", 1e-3}, {"V", 1},         {"s", 1},
        {"ms", 1e-3},       {"A2s", 1},     {"C", 1},     {"K.m/W", 1},     {"1/K", 1},
        {"A.s^0.5/mm2", 1}, {"ratio", 1},   {"%", 0.01},  {"rods", 1},      {"cores", 1},
        {"W", 1},           {"kW", 1e3},    {"kVA", 1e3}};
    return known;
}

std::string trimmed(const std::string& s) {
    const auto first = s.find_first_not_of(" \t\r");
    if (first == std::string::npos) return "";
    return s.substr(first, s.find_last_not_of(" \t\r") - first + 1);
}

class CaseReader {
public:
    explicit CaseReader(const std::string& file) : file_(file) {}

    CaseFile read(const std::string& text) {
        std::istringstream in(text);
        std::string line;
        while (std::getline(in, line)) {
            ++line_;
            line = trimmed(line);
            if (!line.empty() && line[0] != '#') take(line);
        }
        close();
        if (out_.cases.empty()) fault("there is no case");
        return std::move(out_);
    }

private:
    void fault(const std::string& says) {
        out_.faults.push_back(file_ + ":" + std::to_string(line_) + ": " + says);
    }

    void take(const std::string& line) {
        const auto space = line.find(' ');
        const std::string key = line.substr(0, space);
        const std::string rest = space == std::string::npos ? "" : trimmed(line.substr(space));
        if (rest.empty()) return fault("nothing follows " + key);
        if (key == "method") return method(rest);
        if (key == "case") return open(rest);
        if (!inside_) return fault(key + " stands outside a case");
        if (key == "source") return source(rest);
        if (key == "because") return append(now_.because, rest);
        if (key == "given") return given(rest);
        if (key == "expect") return expect(rest, line);
        if (key == "refuse") return refuse(rest, line);
        fault("a line cannot begin with " + key);
    }

    static void append(std::string& to, const std::string& more) {
        to += (to.empty() ? "" : " ") + more;
    }

    void method(const std::string& name) {
        if (!method_.empty()) return fault("a file holds one method");
        method_ = name;
    }

    void open(const std::string& title) {
        close();
        inside_ = true;
        now_ = {};
        now_.file = file_;
        now_.line = line_;
        now_.method = method_;
        now_.title = title;
    }

    void close() {
        if (!inside_) return;
        inside_ = false;
        if (now_.method.empty()) return fault(now_.title + ": the file names no method");
        if (now_.source.empty()) return fault(now_.title + ": no source");
        if (now_.locator.empty()) return fault(now_.title + ": no locator");
        if (now_.checks.empty()) return fault(now_.title + ": nothing is expected or refused");
        bool refuses = false;
        for (const Check& check : now_.checks) refuses = refuses || check.asks == Asks::different;
        if (refuses && now_.because.empty()) return fault(now_.title + ": refused without because");
        out_.cases.push_back(now_);
    }

    void source(const std::string& rest) {
        const auto at = rest.find(", locator ");
        if (at == std::string::npos) return fault("a source needs ', locator …'");
        now_.source = trimmed(rest.substr(0, at));
        now_.locator = trimmed(rest.substr(at + 10));
    }

    bool figure(const std::string& value, const std::string& unit, double& out) {
        const auto known = units().find(unit);
        if (known == units().end()) {
            fault("unknown unit '" + unit + "'");
            return false;
        }
        char* end = nullptr;
        out = std::strtod(value.c_str(), &end) * known->second;
        if (value.empty() || *end != '\0' || !std::isfinite(out)) {
            fault("not a number: '" + value + "'");
            return false;
        }
        return true;
    }

    void given(const std::string& rest) {
        std::istringstream in(rest);
        std::string name, value, unit;
        in >> name >> value >> unit;
        if (unit == "word") {
            now_.words[name] = value;
            return;
        }
        double number = 0;
        if (figure(value, unit, number)) now_.numbers[name] = number;
    }

    void expect(const std::string& rest, const std::string& line) {
        std::istringstream in(rest);
        std::string value, unit, how, share, percent;
        Check check;
        in >> check.name >> value >> unit >> how >> share >> percent;
        check.text = line;
        if (!figure(value, unit, check.value)) return;
        if (how == "or" && (share == "more" || share == "less")) {
            check.asks = share == "more" ? Asks::at_least : Asks::at_most;
        } else if (how == "within" && percent == "%") {
            if (!figure(share, "%", check.tolerance)) return;
        } else {
            return fault("expect ends in 'within N %', 'or more' or 'or less'");
        }
        now_.checks.push_back(check);
    }

    void refuse(const std::string& rest, const std::string& line) {
        std::istringstream in(rest);
        std::string value, unit;
        Check check;
        in >> check.name >> value >> unit;
        check.text = line;
        check.asks = Asks::different;
        check.tolerance = refused_within;
        if (figure(value, unit, check.value)) now_.checks.push_back(check);
    }

    std::string file_;
    int line_ = 0;
    std::string method_;
    bool inside_ = false;
    PublishedCase now_;
    CaseFile out_;
};

bool met(const Check& check, double result) {
    const double gap = std::fabs(result - check.value);
    switch (check.asks) {
        case Asks::close:
            return gap <= check.tolerance * std::fabs(check.value);
        case Asks::different:
            return gap > check.tolerance * std::fabs(check.value);
        case Asks::at_least:
            return result >= check.value;
        case Asks::at_most:
            return result <= check.value;
    }
    return false;
}

}  // namespace

double PublishedCase::number(const std::string& name) const {
    const auto found = numbers.find(name);
    if (found == numbers.end()) throw std::runtime_error("the case does not give " + name);
    return found->second;
}

double PublishedCase::number(const std::string& name, double otherwise) const {
    const auto found = numbers.find(name);
    return found == numbers.end() ? otherwise : found->second;
}

const std::string& PublishedCase::word(const std::string& name) const {
    const auto found = words.find(name);
    if (found == words.end()) throw std::runtime_error("the case does not give the word " + name);
    return found->second;
}

void PrintTo(const PublishedCase& published, std::ostream* out) { *out << published.title; }

CaseFile read_cases(const std::string& file, const std::string& text) {
    return CaseReader(file).read(text);
}

std::vector<std::string> unmet(const PublishedCase& published,
                               const std::map<std::string, double>& results) {
    std::vector<std::string> sentences;
    for (const Check& check : published.checks) {
        const auto result = results.find(check.name);
        if (result == results.end()) {
            sentences.push_back(check.text + ": the method gives no " + check.name);
        } else if (!met(check, result->second)) {
            sentences.push_back(check.text + ": it is " + significant(result->second, 7));
        }
    }
    return sentences;
}

}  // namespace toft::support
