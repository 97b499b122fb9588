#pragma once
// The page, the engine and one job in one file, for a phone that no server reaches.

#include "server/page_files.h"

#include <string>
#include <string_view>

namespace toft::pocket {

/// The name under which a browser finds again what was changed in a page made before of the same
/// job: in the shape of a UUID, the same for the same text.
std::string id_of(std::string_view job);

/// The page's single file with the job (JSON) and the engine's whole module at its mark. Empty
/// where `files` have no such page or no engine.
std::string pocket_page(const server::PageFiles& files, std::string_view job);

}  // namespace toft::pocket
