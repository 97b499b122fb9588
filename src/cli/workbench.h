#pragma once
// Everything the commands need, loaded once from what the program carries, and the user's own price
// book.

#include "answer/answer.h"
#include "base/outcome.h"

#include <string>

namespace toft::cli {

/// Tables and price book. What the book does not price the tables do not offer.
struct Workbench {
    tables::Catalogue catalogue;
    price::Book book;
};

/// The file of the user's own price book, for all that follows; empty: the invented one. Set once,
/// before any command runs.
void use_prices(const std::string& path);
const std::string& prices_in_use();

/// The name a book goes by: that of its file, without the folder.
std::string name_of_book(const std::string& path);

/// With the book of that file; empty: the invented one.
Outcome<Workbench> load_workbench(const std::string& prices);

/// With the book in use.
Outcome<Workbench> load_workbench();

/// Reads the job at `path` ("-" for standard input).
Outcome<site::Job> load_job(const Workbench& bench, const std::string& path);

}  // namespace toft::cli
