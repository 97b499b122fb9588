#pragma once
// The papers of a job as files: one PDF each, and one that holds them all with a list in front.

#include "base/outcome.h"
#include "portfolio/kinds.h"
#include "print/font.h"

#include <string>
#include <vector>

namespace toft::pack {

struct File {
    std::string name;
    std::string bytes;
    std::size_t pages = 0;  ///< of a PDF; 0 for other files
};

struct Pack {
    std::vector<File> files;
    std::u32string missing;  ///< characters that the fonts lack, each once
};

inline constexpr const char* whole_name = "pack.pdf";

/// The papers of those kinds, in that order, and behind them `whole_name` with all of them where
/// there are several. The same input gives the same bytes. Faults: those of print::to_pdf.
Outcome<Pack> pack_of(const paper::Subject& subject, const std::vector<const paper::Kind*>& kinds,
                      const print::Fonts& fonts);

}  // namespace toft::pack
