#pragma once
// A sum in a price book as people write it.

#include <string>

namespace toft::price {

/// Plain digits with a dot at the most, such as 12.50; not above a million.
struct Amount {
    double value = 0;
    const char* wrong = nullptr;  ///< what is wrong with it and how to write it; null for nothing
};

Amount amount_of(const std::string& cell);

/// Without blanks at either end.
std::string trimmed(const std::string& cell);

}  // namespace toft::price
