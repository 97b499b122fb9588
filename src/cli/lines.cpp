#include "cli/lines.h"

#include "cli/interrupt.h"
#include "codec/limits.h"

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <utility>

#include <fcntl.h>
#include <unistd.h>

namespace toft::cli {

namespace {

constexpr std::size_t block_bytes = 65536;
constexpr std::size_t most_kept = codec::largest_document + 1;

}  // namespace

Outcome<LineReader> LineReader::open(const std::string& path) {
    if (path == "-") return LineReader(STDIN_FILENO);
    std::error_code error;
    if (std::filesystem::is_directory(path, error)) {
        return failed(Fault{"file", "", path + " is a folder; name a file of jobs", "", {}});
    }
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) {
        return failed(Fault{"file", "", path + " cannot be read; check the name", "", {}});
    }
    return LineReader(descriptor);
}

LineReader::~LineReader() {
    if (descriptor_ > STDIN_FILENO) close(descriptor_);
}

LineReader::LineReader(LineReader&& other) noexcept
    : descriptor_(std::exchange(other.descriptor_, -1)),
      block_(std::move(other.block_)),
      at_(other.at_),
      ended_(other.ended_) {}

LineReader::Got LineReader::fill() {
    block_.resize(block_bytes);
    at_ = 0;
    ssize_t got = -1;
    do {
        if (!Interrupt::wait_to_read(descriptor_)) return Got::stopped;
        got = read(descriptor_, block_.data(), block_.size());
    } while (got < 0 && (errno == EINTR || errno == EAGAIN));
    block_.resize(got > 0 ? static_cast<std::size_t>(got) : 0);
    ended_ = got == 0;
    return got < 0 ? Got::broken : Got::line;
}

LineReader::Got LineReader::next(std::string& line) {
    line.clear();
    bool begun = false;
    bool cut = false;
    for (;;) {
        if (at_ == block_.size() && !ended_) {
            const Got filled = fill();
            if (filled != Got::line) return filled;
        }
        if (ended_ && !begun) return Got::end;
        begun = true;
        const std::size_t feed = std::min(block_.find('\n', at_), block_.size());
        const std::size_t kept = std::min(feed - at_, most_kept - line.size());
        cut = cut || kept < feed - at_;
        line.append(block_, at_, kept);
        const bool whole = ended_ || feed < block_.size();
        at_ = ended_ ? feed : std::min(feed + 1, block_.size());
        if (!whole) continue;
        if (!cut && !line.empty() && line.back() == '\r') line.pop_back();
        return Got::line;
    }
}

}  // namespace toft::cli
