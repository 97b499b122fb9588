#include "support/phasor_nets.h"

#include "support/spice.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::support {

namespace {

/// The node of one of the two nets; earth is common.
std::string in_net(const std::string& node, const char* net) {
    return node == "0" ? node : node + net;
}

/// The voltage of a node in one net, as behavioural sources write it.
std::string volts_of(const std::string& node, const char* net) {
    return node == "0" ? "0" : fmt::format("v({})", in_net(node, net));
}

}  // namespace

void PhasorNets::source(const std::string& node, Volts u, double degrees) {
    const double angle = degrees * 3.14159265358979323846 / 180;
    netlist_ += fmt::format("V{0}r {1}r 0 {2:.17g}\nV{0}i {1}i 0 {3:.17g}\n", elements_++, node,
                            u.number() * std::cos(angle), u.number() * std::sin(angle));
}

void PhasorNets::resistance(const std::string& from, const std::string& to, Ohms r) {
    const int n = elements_++;
    for (const char* net : {"r", "i"}) {
        netlist_ += fmt::format("R{}{} {} {} {:.17g}\n", n, net, in_net(from, net), in_net(to, net),
                                r.number());
    }
}

void PhasorNets::power(const std::string& from, const std::string& to, double watts, double vars) {
    const int n = elements_++;
    const std::string re = fmt::format("({}-{})", volts_of(from, "r"), volts_of(to, "r"));
    const std::string im = fmt::format("({}-{})", volts_of(from, "i"), volts_of(to, "i"));
    const std::string square = fmt::format("({0}*{0}+{1}*{1})", re, im);
    netlist_ += fmt::format("B{}r {} {} I=({:.17g}*{}+{:.17g}*{})/{}\n", n, in_net(from, "r"),
                            in_net(to, "r"), watts, re, vars, im, square);
    netlist_ += fmt::format("B{}i {} {} I=({:.17g}*{}-({:.17g})*{})/{}\n", n, in_net(from, "i"),
                            in_net(to, "i"), watts, im, vars, re, square);
}

void PhasorNets::ask_voltage(const std::string& as, const std::string& node) {
    questions_ +=
        fmt::format("let {0} = sqrt(v({1}r)*v({1}r)+v({1}i)*v({1}i))\nprint {0}\n", as, node);
    names_.push_back(as);
}

std::map<std::string, double> PhasorNets::solve() const {
    return ask_ngspice(netlist_ + ".options reltol=1e-9 abstol=1e-12 vntol=1e-9\n",
                       "op\n" + questions_, names_);
}

}  // namespace toft::support
