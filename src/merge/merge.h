#pragma once
// Two people changed one job: both changes put together, fact by fact. What both changed in
// different ways is a clash and is named, never decided. Page: docs/store.md.

#include "base/outcome.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toft::merge {

/// One fact that both sides changed, each in its own way. Values are JSON text; empty where the
/// document says nothing.
struct Clash {
    std::string pointer;  ///< where `yours` would go in the merged job; ends in "-" where theirs
                          ///< took a whole item out of a list (RFC 6901: one past its end)
    std::string says;     ///< a sentence with names in place of numbers
    std::string was;      ///< before both changes
    std::string yours;
    std::string theirs;  ///< what the merged job keeps
};

/// Both changes in one job.
struct Merged {
    std::string job;             ///< JSON text; where the two clash it keeps theirs
    std::vector<Clash> clashes;  ///< in the order of the document; empty when all went together
};

/// Merges what `mine` and `theirs` made of `base`, three documents as `codec::parse_document`
/// bounds them. A fact is a value, or an object that says how well one is known. Buildings and runs
/// are told by their id, circuits by name, metalwork by what it is; legs and layers by their place
/// while their number stays; any other list is one fact. The order of what is told by name is no
/// fact: where both changed it, theirs stands. Faults: those of the reader, their `pointer` led by
/// `base`, `mine` or `theirs`; `not-a-job` for what is no object.
Outcome<Merged> merge(std::string_view base, std::string_view mine, std::string_view theirs);

/// Whether two documents say the same: order of keys and blanks do not count. False where one
/// cannot be read.
bool same_job(std::string_view a, std::string_view b);

/// Where the fact at `pointer` of `then` stands in `now`, by the same likeness as in `merge`;
/// nothing when it is gone or either document cannot be read. The fact itself need not be stated:
/// it is enough that what it belongs to is still there.
std::optional<std::string> follow(std::string_view pointer, std::string_view then,
                                  std::string_view now);

}  // namespace toft::merge
