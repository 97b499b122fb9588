#pragma once
// A circuit of resistances and reactances at 50 Hz, solved by ngspice: a second opinion on loops
// and drops that shares no code with the program.

#include "base/impedance.h"

#include <map>
#include <string>
#include <vector>

namespace toft::support {

/// Runs ngspice on a netlist and what follows it as control; the figures it prints as "name = …".
/// Throws when it cannot be run or leaves one of `names` out.
std::map<std::string, double> ask_ngspice(const std::string& netlist, const std::string& control,
                                          const std::vector<std::string>& names);

class Circuit {
public:
    /// An impedance between two nodes. A part that is zero is left out.
    void impedance(const std::string& from, const std::string& to, const Impedance& z);
    /// An alternating voltage from `node` to earth, ahead by `degrees`; its current can be asked
    /// for by `name`.
    void source(const std::string& name, const std::string& node, Volts u, double degrees = 0);

    /// Asks for the current that a source delivers, or the voltage of a node; `as` names the
    /// answer.
    void ask_current(const std::string& as, const std::string& source);
    void ask_voltage(const std::string& as, const std::string& node);
    /// The voltage from one node to another.
    void ask_voltage_between(const std::string& as, const std::string& node,
                             const std::string& other);

    /// Runs ngspice once: the magnitudes asked for, by name. Throws when ngspice cannot be run or
    /// leaves an answer out.
    std::map<std::string, double> solve() const;

private:
    std::string netlist_;
    std::string questions_;
    std::vector<std::string> names_;
    int elements_ = 0;
};

}  // namespace toft::support
