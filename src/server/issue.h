#pragma once
// The papers of a job as files.

#include "base/outcome.h"
#include "print/font.h"
#include "request/bench.h"
#include "store/papers.h"

#include <functional>
#include <string>
#include <vector>

namespace toft::server {

struct PapersWish {
    std::vector<std::string> kinds;  ///< of paper::kinds(); empty for all, with lists and drawings
    std::string key;                 ///< of a scheme; empty: by rank
    int rank = 1;
    std::string date;  ///< year-month-day
};

/// What papers are made with.
struct PapersOf {
    const request::Stock& stock;
    const print::Fonts& fonts;
    std::function<bool()> go_on;  ///< whether it is still worth while to look for schemes
    double (*milliseconds)();
};

struct Papers {
    std::vector<store::PaperFile> files;
    std::string scheme;  ///< in words; empty where nothing is sound
};

/// Faults: those of the job, `unknown-word` (a kind), `out-of-range` (the date), `unknown-scheme`,
/// `no-sound-scheme`, `stopped`, those of pack.
Outcome<Papers> make_papers(const PapersOf& with, const std::string& job, const PapersWish& wish);

}  // namespace toft::server
