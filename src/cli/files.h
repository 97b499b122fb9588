#pragma once
// Files in and out. The only place, with the clock, where the program touches the world.

#include "base/outcome.h"

#include <string>

namespace toft::cli {

/// Bytes of a file, or of standard input for "-".
Outcome<std::string> read_input(const std::string& path);

/// Bytes of a file of any size.
Outcome<std::string> read_whole(const std::string& path);

/// Writes a file, making its folder if need be.
Outcome<std::string> write_output(const std::string& path, const std::string& text);

/// Milliseconds of a steady clock.
double now_milliseconds();

/// The day as the machine's clock has it in UTC: year-month-day.
std::string today();

}  // namespace toft::cli
