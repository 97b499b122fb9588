#pragma once
// The far board of a run for whoever fits it: main switch, residual devices, every way with its
// device and cable, where its earth comes from.

#include "paper/run_sheet.h"

namespace toft::paper {

/// Main switch, residual devices, fault current, earth, electrode: "what", then how it is to be.
std::vector<std::pair<std::string, std::string>> board_lines(const RunSheet& sheet);

page::Table board_table(const RunSheet& sheet);

/// A row for each way, in the order of the survey; none is left out. Then a row "out" for each that
/// feeds another building.
page::Table ways_table(const RunSheet& sheet);

/// What of the ways is to be heeded, each with its number.
std::vector<std::string> ways_cautions(const RunSheet& sheet);

}  // namespace toft::paper
