#pragma once
// What goes where along one run: cable, glands, cores, what each is put on at either end with room
// for the torque that was used, bonds, rod.

#include "paper/run_sheet.h"

namespace toft::paper {

/// A conductor from one terminal to another; "isolated: …" where it is joined to nothing.
struct Termination {
    std::string conductor;  ///< "PE: black, sleeved green-and-yellow, 10 mm²"
    std::string near, far;  ///< what it is put on
    bool near_joined = true, far_joined = true;
};

/// Conductors between two enclosures.
struct Terminations {
    std::string near, far;  ///< "The house", "Joint box", "Board of Gym"
    std::vector<Termination> list;
};

/// Stretch by stretch from the near end; last the bonds and the rod's conductor, where there are
/// any.
std::vector<Terminations> terminations_of(const RunSheet& sheet);

/// "what", then how it is to be: device, residual device, cables, glands; for the near end and the
/// way to the far board.
std::vector<std::pair<std::string, std::string>> run_lines(const RunSheet& sheet);

page::Table run_table(const RunSheet& sheet);
/// With room for the torque that makers state and the one used; a table each.
std::vector<page::Table> terminations_tables(const RunSheet& sheet);

}  // namespace toft::paper
