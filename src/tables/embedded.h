#pragma once
// The data files as the build embeds them: one program file holds everything.

#include <cstddef>
#include <string_view>

namespace toft::tables {

/// A file by its name below data/ (or "schema/…", "examples/…") and its bytes.
struct EmbeddedFile {
    std::string_view name;
    std::string_view text;
};

struct EmbeddedFiles {
    const EmbeddedFile* first = nullptr;
    std::size_t count = 0;
};

EmbeddedFiles embedded_files();

/// The text of one embedded file; empty when there is none of that name.
std::string_view embedded_text(std::string_view name);

}  // namespace toft::tables
