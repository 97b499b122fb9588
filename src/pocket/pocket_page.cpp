#include "pocket/pocket_page.h"

#include "pocket/base64.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

namespace toft::pocket {

namespace {

constexpr std::string_view mark = "<!--toft-pocket-->";

server::PageFile find(const server::PageFiles& files, std::string_view path) {
    const auto* found =
        std::find_if(files.begin(), files.end(),
                     [path](const server::PageFile& file) { return file.path == path; });
    return found == files.end() ? server::PageFile{} : *found;
}

/// JSON that may stand in a script element: no tag can begin in it.
std::string in_script(std::string_view json) {
    std::string out;
    for (const char sign : json) {
        if (sign == '<') {
            out += "\\u003c";
        } else {
            out += sign;
        }
    }
    return out;
}

std::string module_inside(const server::PageFiles& files, std::string_view name) {
    const std::string_view packed = find(files, fmt::format("/{}", name)).gz;
    if (packed.empty()) return {};
    return fmt::format("<script type=\"text/plain\" id=\"{}.gz\">{}</script>\n", name,
                       base64(packed));
}

}  // namespace

// FNV-1a from two starts.
std::string id_of(std::string_view job) {
    std::uint64_t parts[2] = {0xcbf29ce484222325U, 0x84222325cbf29ce4U};
    for (const char sign : job) {
        for (std::uint64_t& part : parts) {
            part = (part ^ static_cast<unsigned char>(sign)) * 0x100000001b3U;
        }
    }
    const std::string hex = fmt::format("{:016x}{:016x}", parts[0], parts[1]);
    return fmt::format("{}-{}-8{}-8{}-{}", hex.substr(0, 8), hex.substr(8, 4), hex.substr(13, 3),
                       hex.substr(17, 3), hex.substr(20, 12));
}

std::string pocket_page(const server::PageFiles& files, std::string_view job) {
    const std::string_view page = find(files, "/pocket.html").raw;
    const std::string engine = module_inside(files, "toft.wasm");
    const std::size_t place = page.find(mark);
    if (place == std::string_view::npos || engine.empty()) return {};
    std::string out(page.substr(0, place));
    out += fmt::format(
        "<script type=\"application/json\" id=\"toft-job\">{{\"id\":\"{}\",\"job\":{}}}</script>\n",
        id_of(job), in_script(job));
    out += engine;
    out += page.substr(place + mark.size());
    return out;
}

}  // namespace toft::pocket
