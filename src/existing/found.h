#pragma once
// Things found wrong at what is there: which of them a way to build the run meets.

#include "study/scheme.h"
#include "study/setting.h"

namespace toft::existing {

/// Something found wrong, with the place in words. The row lives as long as the tables.
struct FoundWrong {
    const tables::FoundRow* row = nullptr;
    std::string where;
};

/// Whatever was found at the run, at the building it feeds and, where it starts there, at the
/// house, that the scheme's way to build it is spoken of by.
template <class L>
std::vector<FoundWrong> found_for(const study::Setting<L>& setting, const study::RunScheme& scheme);

/// Items of the price book that put them right, each once; they live as long as the tables.
std::vector<const char*> put_right(const std::vector<FoundWrong>& found);

}  // namespace toft::existing
