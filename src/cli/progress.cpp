#include "cli/progress.h"

#include "cli/files.h"
#include "cli/layout.h"

#include <fmt/format.h>

#include <cstdio>

#include <unistd.h>

namespace toft::cli {

namespace {

constexpr double first_ms = 1000;
constexpr double between_ms = 250;

}  // namespace

ProgressLine::ProgressLine() : terminal_(isatty(STDERR_FILENO) == 1), began_(now_milliseconds()) {
    last_ = began_ + first_ms - between_ms;
}

bool ProgressLine::due() const { return terminal_ && now_milliseconds() - last_ >= between_ms; }

void ProgressLine::show(const std::string& text) {
    if (!terminal_) return;
    last_ = now_milliseconds();
    std::string line = text;
    while (width_of(line) >= screen_width) line.pop_back();
    fmt::print(stderr, "\r{}\x1b[K", line);
    std::fflush(stderr);
    shown_ = true;
}

void ProgressLine::clear() {
    if (shown_) std::fputs("\r\x1b[K", stderr);
    shown_ = false;
}

double ProgressLine::seconds() const { return (now_milliseconds() - began_) / 1000; }

}  // namespace toft::cli
