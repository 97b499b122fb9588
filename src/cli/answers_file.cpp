#include "cli/answers_file.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <string_view>
#include <utility>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace toft::cli {

namespace {

Fault about_file(const std::string& path, const char* says) {
    return {"file", "", path + " " + says, "", {}};
}

/// How lines of answers begin.
constexpr std::array<std::string_view, 2> beginnings{R"({"format":"toft-answer/)",
                                                     R"({"format":"toft-faults/)"};

/// Of a first line that is not whole as far as it goes.
bool begins_as_answers(int descriptor) {
    std::array<char, 32> head{};
    const ssize_t got = pread(descriptor, head.data(), head.size(), 0);
    if (got <= 0) return false;
    const std::string_view seen(head.data(), static_cast<std::size_t>(got));
    return std::any_of(beginnings.begin(), beginnings.end(), [&](std::string_view beginning) {
        return seen.substr(0, beginning.size()) == beginning.substr(0, seen.size());
    });
}

}  // namespace

Outcome<AnswersFile> AnswersFile::open(const std::string& path, bool resume, int jobs) {
    if (path.empty()) return AnswersFile(STDOUT_FILENO);
    const int descriptor = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0666);
    if (descriptor < 0) return failed(about_file(path, "cannot be written; check the folder"));
    AnswersFile file(descriptor);
    struct stat out {
    }, in{};
    if (fstat(descriptor, &out) != 0) return failed(about_file(path, "cannot be looked at"));
    if (fstat(jobs, &in) == 0 && S_ISREG(in.st_mode) && in.st_dev == out.st_dev &&
        in.st_ino == out.st_ino) {
        return failed(about_file(path, "holds the jobs; name another file for the answers"));
    }
    if (flock(descriptor, LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK) {
        return failed(about_file(path, "is being written by another run; wait until it has ended"));
    }
    if (fstat(descriptor, &out) == 0 && S_ISREG(out.st_mode) && out.st_size > 0) {
        if (!resume) {
            return failed(
                about_file(path, "is there already: go on with it by --resume, or remove it"));
        }
        if (!begins_as_answers(descriptor)) {
            return failed(about_file(path, "does not hold answers of a batch; name another file"));
        }
        Faults faults = file.go_on(path);
        if (!faults.empty()) return failed(std::move(faults));
    }
    return file;
}

/// Counts the whole lines, cuts off what follows the last of them, and stands behind it.
Faults AnswersFile::go_on(const std::string& path) {
    std::array<char, 65536> block{};
    off_t at = 0;
    off_t whole = 0;
    for (;;) {
        const ssize_t got = read(descriptor_, block.data(), block.size());
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) return {about_file(path, "cannot be read again")};
        if (got == 0) break;
        for (ssize_t i = 0; i < got; ++i) {
            if (block[static_cast<std::size_t>(i)] != '\n') continue;
            ++lines_before_;
            whole = at + i + 1;
        }
        at += got;
    }
    if (ftruncate(descriptor_, whole) != 0 || lseek(descriptor_, whole, SEEK_SET) != whole) {
        return {about_file(path, "cannot be gone on with: its half-written last line stays")};
    }
    return {};
}

AnswersFile::~AnswersFile() {
    if (descriptor_ > STDERR_FILENO) close(descriptor_);
}

AnswersFile::AnswersFile(AnswersFile&& other) noexcept
    : descriptor_(std::exchange(other.descriptor_, -1)), lines_before_(other.lines_before_) {}

bool AnswersFile::append(const std::string& lines) {
    std::size_t written = 0;
    while (written < lines.size()) {
        const ssize_t more = write(descriptor_, lines.data() + written, lines.size() - written);
        if (more < 0 && errno == EINTR) continue;
        if (more < 0) return false;
        written += static_cast<std::size_t>(more);
    }
    return true;
}

}  // namespace toft::cli
