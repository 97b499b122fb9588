#include "tables/embedded.h"

namespace toft::tables {

std::string_view embedded_text(std::string_view name) {
    const EmbeddedFiles files = embedded_files();
    for (std::size_t i = 0; i < files.count; ++i) {
        if (files.first[i].name == name) return files.first[i].text;
    }
    return {};
}

}  // namespace toft::tables
