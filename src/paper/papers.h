#pragma once
// Every paper there is, by name.

#include "paper/ground_sheet.h"
#include "paper/subject.h"

#include <string_view>

namespace toft::paper {

page::Paper design_record(const Subject& subject);
page::Paper test_sheet(const Subject& subject);
page::Paper materials(const Subject& subject);
page::Paper installers_sheet(const Subject& subject);
page::Paper clients_choice(const Subject& subject);  ///< the scheme need not exist
page::Paper users_sheet(const Subject& subject);
page::Paper labels(const Subject& subject);

struct Kind {
    const char* file;  ///< of its file, without ending
    const char* name;
    const char* says;  ///< for whom and what for
    page::Paper (*write)(const Subject& subject);
    bool without_scheme = false;  ///< it is written where nothing is sound, too
};

/// In the order of a pack.
const std::vector<Kind>& kinds();

/// Null when none has that file name.
const Kind* find_kind(std::string_view file);

}  // namespace toft::paper
