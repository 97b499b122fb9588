#include "support/spice.h"

#include <fmt/format.h>

#include <unistd.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>

namespace toft::support {

namespace {

constexpr double radians_a_second = 2 * 3.14159265358979323846 * 50;

std::string output_of(const std::string& command) {
    FILE* pipe = popen(command.c_str(), "r");
    if (!pipe) throw std::runtime_error("cannot start " + command);
    std::string text;
    char buffer[4096];
    for (std::size_t n; (n = std::fread(buffer, 1, sizeof buffer, pipe)) > 0;)
        text.append(buffer, n);
    pclose(pipe);
    return text;
}

/// The figure after "name = " in what ngspice printed.
double answer(const std::string& text, const std::string& name) {
    const std::string key = "\n" + name + " = ";
    const auto at = text.find(key);
    if (at == std::string::npos) {
        throw std::runtime_error("ngspice gave no " + name + "; it said:\n" + text.substr(0, 2000));
    }
    return std::strtod(text.c_str() + at + key.size(), nullptr);
}

}  // namespace

void Circuit::impedance(const std::string& from, const std::string& to, const Impedance& z) {
    const double r = z.r.number();
    const double l = z.x.number() / radians_a_second;
    const int n = elements_++;
    const std::string middle = l == 0 ? to : r == 0 ? from : fmt::format("m{}", n);
    if (r != 0) netlist_ += fmt::format("R{} {} {} {:.17g}\n", n, from, middle, r);
    if (l != 0) netlist_ += fmt::format("L{} {} {} {:.17g}\n", n, middle, to, l);
}

void Circuit::source(const std::string& name, const std::string& node, Volts u, double degrees) {
    netlist_ += fmt::format("V{} {} 0 dc 0 ac {:.17g} {:.17g}\n", name, node, u.number(), degrees);
}

void Circuit::ask_current(const std::string& as, const std::string& source) {
    questions_ += fmt::format("let {} = mag(i(V{}))\nprint {}\n", as, source, as);
    names_.push_back(as);
}

void Circuit::ask_voltage(const std::string& as, const std::string& node) {
    questions_ += fmt::format("let {} = mag(v({}))\nprint {}\n", as, node, as);
    names_.push_back(as);
}

void Circuit::ask_voltage_between(const std::string& as, const std::string& node,
                                  const std::string& other) {
    questions_ += fmt::format("let {} = mag(v({}) - v({}))\nprint {}\n", as, node, other, as);
    names_.push_back(as);
}

std::map<std::string, double> ask_ngspice(const std::string& netlist, const std::string& control,
                                          const std::vector<std::string>& names) {
    const auto file = std::filesystem::temp_directory_path() /
                      fmt::format("toft_circuits_{}.cir", static_cast<long>(getpid()));
    std::ofstream(file) << "* loops and drops\n"
                        << netlist << ".control\nset numdgt=14\n"
                        << control << "quit\n.endc\n.end\n";
    const std::string text = "\n" + output_of(fmt::format("ngspice -b {} 2>&1", file.string()));
    std::filesystem::remove(file);
    std::map<std::string, double> answers;
    for (const std::string& name : names) answers[name] = answer(text, name);
    return answers;
}

std::map<std::string, double> Circuit::solve() const {
    return ask_ngspice(netlist_, "ac lin 1 50 50\n" + questions_, names_);
}

}  // namespace toft::support
