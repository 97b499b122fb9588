#pragma once
// toft pocket: the page, the engine and one job in one file, for a phone that no server reaches.

#include <string>

namespace toft::cli {

struct PocketArguments {
    std::string job;
    std::string out;
};

/// Writes the page as one HTML file that works by itself. Exit codes as of every command.
int pocket(const PocketArguments& arguments);

}  // namespace toft::cli
