#pragma once
// The page's files as the program carries them.

#include <cstddef>
#include <string_view>

namespace toft::server {

struct PageFile {
    std::string_view path;  ///< from the root: "/index.html"
    std::string_view type;  ///< media type
    std::string_view etag;  ///< with its quotation marks
    std::string_view raw;
    std::string_view gz;  ///< the same, packed
};

struct PageFiles {
    const PageFile* first = nullptr;
    std::size_t count = 0;

    const PageFile* begin() const { return first; }
    const PageFile* end() const { return first + count; }
};

/// All of them, sorted by path.
PageFiles page_files();

}  // namespace toft::server
