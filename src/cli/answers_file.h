#pragma once
// Where a batch leaves its answers, a whole line each: standard output, or a file that a later run
// goes on with after this one was stopped, killed or cut off.

#include "base/outcome.h"

#include <string>

namespace toft::cli {

class AnswersFile {
public:
    /// Empty `path` for standard output. A file that holds something is refused unless `resume`:
    /// then its whole lines stay and are counted, and a last half one is cut off. Held against
    /// other runs while open; never the file that `jobs` (a descriptor) reads.
    static Outcome<AnswersFile> open(const std::string& path, bool resume, int jobs);
    ~AnswersFile();
    AnswersFile(AnswersFile&& other) noexcept;
    AnswersFile(const AnswersFile&) = delete;
    AnswersFile& operator=(const AnswersFile&) = delete;
    AnswersFile& operator=(AnswersFile&&) = delete;

    long lines_before() const { return lines_before_; }

    /// All of it, or false where no more can be written.
    bool append(const std::string& lines);

private:
    explicit AnswersFile(int descriptor) : descriptor_(descriptor) {}

    Faults go_on(const std::string& path);

    int descriptor_ = -1;
    long lines_before_ = 0;
};

}  // namespace toft::cli
