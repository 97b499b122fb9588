#pragma once
// A drawing made ready for paper.

#include <string>

namespace toft::print {

struct Printed {
    std::string bytes;       ///< the file's content
    std::u32string missing;  ///< characters the font lacks, shown as U+FFFD; empty when all is well
};

}  // namespace toft::print
