#pragma once
// Every paper there is, by name.

#include "paper/subject.h"

#include <string_view>
#include <vector>

namespace toft::paper {

struct Kind {
    const char* file;  ///< of its file, without ending
    const char* name;
    const char* says;  ///< for whom and what for
    page::Paper (*write)(const Subject& subject);
    bool without_scheme = false;  ///< it is written where nothing is sound, too
};

/// The paper of that kind, with what it hangs on framed in front where the scheme is sound only on
/// conditions.
page::Paper written(const Kind& kind, const Subject& subject);

/// In the order of a pack.
const std::vector<Kind>& kinds();

/// Null when none has that file name.
const Kind* find_kind(std::string_view file);

}  // namespace toft::paper
