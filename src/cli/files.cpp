#include "cli/files.h"

#include "codec/limits.h"

#include <fmt/format.h>

#include <chrono>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>

namespace toft::cli {

namespace {

Fault file_fault(const std::string& path, const char* says) {
    return {"file", "", fmt::format("{} {}", path, says), "", {}};
}

/// Reads a little more than is ever accepted, so that whoever parses can refuse the size by name.
std::string slurp(std::istream& in) {
    std::string text;
    char block[65536];
    while (text.size() <= codec::largest_document && in.read(block, sizeof block).gcount() > 0) {
        text.append(block, static_cast<std::size_t>(in.gcount()));
    }
    return text;
}

}  // namespace

Outcome<std::string> read_input(const std::string& path) {
    if (path == "-") return slurp(std::cin);
    std::error_code error;
    if (std::filesystem::is_directory(path, error)) {
        return failed(file_fault(path, "is a folder; name a job file"));
    }
    std::ifstream in(path, std::ios::binary);
    if (!in) return failed(file_fault(path, "cannot be read; check the name"));
    return slurp(in);
}

Outcome<std::string> read_whole(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    std::ostringstream bytes;
    bytes << in.rdbuf();
    if (!in) return failed(file_fault(path, "cannot be read; check the name"));
    return std::move(bytes).str();
}

Outcome<std::string> write_output(const std::string& path, const std::string& text) {
    const std::filesystem::path file(path);
    std::error_code error;
    if (file.has_parent_path()) std::filesystem::create_directories(file.parent_path(), error);
    std::ofstream out(path, std::ios::binary);
    out << text;
    out.close();
    if (!out) return failed(file_fault(path, "cannot be written; check the folder"));
    return path;
}

double now_milliseconds() {
    const auto now = std::chrono::steady_clock::now().time_since_epoch();
    return std::chrono::duration<double, std::milli>(now).count();
}

std::string today() {
    const std::time_t now = std::chrono::system_clock::to_time_t(std::chrono::system_clock::now());
    char text[16] = "";
    std::strftime(text, sizeof text, "%Y-%m-%d", std::gmtime(&now));
    return text;
}

}  // namespace toft::cli
