#pragma once
// Alternating circuits with loads of constant power, for ngspice. Its alternating analysis knows
// small signals only; so the real and the imaginary parts of all voltages are two direct-current
// nets side by side, coupled by behavioural sources, and its operating point is the answer.

#include "base/units.h"

#include <map>
#include <string>
#include <vector>

namespace toft::support {

class PhasorNets {
public:
    /// A voltage from `node` to earth, ahead by `degrees`.
    void source(const std::string& node, Volts u, double degrees = 0);
    void resistance(const std::string& from, const std::string& to, Ohms r);
    /// A load that draws this power, whatever the voltage; `vars` above 0 when it lags.
    void power(const std::string& from, const std::string& to, double watts, double vars);

    /// The magnitude of the voltage of a node.
    void ask_voltage(const std::string& as, const std::string& node);

    std::map<std::string, double> solve() const;

private:
    std::string netlist_;
    std::string questions_;
    std::vector<std::string> names_;
    int elements_ = 0;
};

}  // namespace toft::support
