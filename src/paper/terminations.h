#pragma once
// What goes where along one run: cable, glands, cores, what each is put on at either end with room
// for the torque that was used, bonds, rod.

#include "paper/run_sheet.h"

namespace toft::paper {

/// A conductor's end at one enclosure.
struct Termination {
    std::string where;      ///< "The house", "Joint box", "Board of Gym"
    std::string conductor;  ///< "PE: black, sleeved green-and-yellow, 10 mm²"
    std::string on;         ///< "main earthing terminal", or that it is joined to nothing
    bool joined = true;
};

/// From the near end outwards, enclosure by enclosure; bonds and the rod's conductor at the last.
std::vector<Termination> terminations_of(const RunSheet& sheet);

/// "what", then how it is to be: device, residual device, cables, glands; for the near end and the
/// way to the far board.
std::vector<std::pair<std::string, std::string>> run_lines(const RunSheet& sheet);

page::Table run_table(const RunSheet& sheet);
page::Table terminations_table(const RunSheet& sheet);

}  // namespace toft::paper
