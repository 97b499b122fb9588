#pragma once
// Everything the commands need, loaded once from what the program carries.

#include "answer/answer.h"
#include "base/outcome.h"

#include <string>

namespace toft::cli {

/// Tables and the demo price book.
struct Workbench {
    tables::Catalogue catalogue;
    price::Book book;
};

Outcome<Workbench> load_workbench();

/// Reads the job at `path` ("-" for standard input).
Outcome<site::Job> load_job(const Workbench& bench, const std::string& path);

}  // namespace toft::cli
