#pragma once
// The methods that published examples are held against, by the name that the case files use. Each
// calls the functions that the program itself calls.

#include "support/case_file.h"

#include "base/ledger.h"

namespace toft::published {

inline const Name unnamed{"x", ""};

using Results = std::map<std::string, double>;

/// Works the case out with the method it names. Throws when there is no such method or the case
/// does not give what the method needs.
Results work_out(const support::PublishedCase& published);

}  // namespace toft::published
