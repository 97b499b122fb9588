#pragma once
// Where a figure comes from and how well it is known.

#include <string>

namespace toft {

/// How a figure of the tables is known.
enum class Basis {
    published,        ///< seen in print or in a reprint
    derived,          ///< calculated from other figures
    common_practice,  ///< a custom of the trade, no source
    memory            ///< recalled, not seen; the locator names where it should stand
};

const char* basis_word(Basis basis);

/// Citation of one row of data.
struct Citation {
    std::string source;   ///< key in the bibliography
    std::string locator;  ///< table, clause or page
    Basis basis = Basis::memory;
    std::string note;
};

/// A value with its citation. The citation outlives the value: it belongs to the tables.
template <class T>
struct Cited {
    T value{};
    const Citation* citation = nullptr;
};

}  // namespace toft
