#include "cli/pocket.h"

#include "cli/command_parts.h"
#include "cli/commands.h"
#include "cli/files.h"
#include "codec/job.h"
#include "server/page_files.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

namespace toft::cli {

namespace {

constexpr std::string_view mark = "<!--toft-pocket-->";

std::string_view page_file(std::string_view path, bool packed) {
    const server::PageFiles files = server::page_files();
    const auto* found =
        std::find_if(files.begin(), files.end(),
                     [path](const server::PageFile& file) { return file.path == path; });
    if (found == files.end()) return {};
    return packed ? found->gz : found->raw;
}

/// RFC 4648, section 4.
std::string base64(std::string_view bytes) {
    constexpr char signs[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string out;
    out.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const std::size_t left = std::min<std::size_t>(3, bytes.size() - i);
        std::uint32_t three = 0;
        for (std::size_t k = 0; k < 3; ++k) {
            three = three << 8 | (k < left ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        }
        for (std::size_t k = 0; k < 4; ++k) {
            out += k <= left ? signs[three >> (18 - 6 * k) & 63U] : '=';
        }
    }
    return out;
}

/// The same job is the same job again: what was changed in a page made before is found by it
/// (FNV-1a, twice, in the shape of a UUID).
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

std::string module_inside(const char* name) {
    const std::string_view packed = page_file(fmt::format("/{}", name), true);
    if (packed.empty()) return {};
    return fmt::format("<script type=\"text/plain\" id=\"{}.gz\">{}</script>\n", name,
                       base64(packed));
}

/// The page with what it needs at its mark; empty where this build carries no page.
std::string page_with(std::string_view job) {
    const std::string_view page = page_file("/pocket.html", false);
    const std::string engine = module_inside("toft.wasm");
    const std::size_t place = page.find(mark);
    if (place == std::string_view::npos || engine.empty()) return {};
    const std::string inside = fmt::format(
        "<script type=\"application/json\" id=\"toft-job\">{{\"id\":\"{}\",\"job\":{}}}</script>\n",
        id_of(job), in_script(job));
    std::string out(page.substr(0, place));
    out += inside + engine + module_inside("toft-papers.wasm");
    out += page.substr(place + mark.size());
    return out;
}

int refused(const Faults& faults) {
    return fault_exit(faults, false, "the page was not written:");
}

}  // namespace

int pocket(const PocketArguments& arguments) {
    return with_bench([&](const Workbench& bench) {
        const auto text = read_input(arguments.job);
        if (!text) return refused(text.error());
        const auto job = codec::read_job(*text, bench.catalogue);
        if (!job) return refused(job.error());
        const std::string page = page_with(*text);
        if (page.empty()) {
            complain("toft: this build carries no page\n");
            return static_cast<int>(program_fault);
        }
        const auto written = write_output(arguments.out, page);
        if (!written) return refused(written.error());
        complain(fmt::format("page: {} ({:.1f} MB)\n", *written,
                             static_cast<double>(page.size()) / 1e6));
        return static_cast<int>(done);
    });
}

}  // namespace toft::cli
