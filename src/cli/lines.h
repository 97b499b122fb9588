#pragma once
// A file read line by line, however long it is and whatever its lines hold.

#include "base/outcome.h"

#include <string>

namespace toft::cli {

/// Lines end with a line feed, or a carriage return and a line feed; the last may lack it. Of a
/// line longer than a job may be, only so much is kept that whoever reads the job refuses it.
class LineReader {
public:
    /// "-" is standard input.
    static Outcome<LineReader> open(const std::string& path);
    ~LineReader();
    LineReader(LineReader&& other) noexcept;
    LineReader(const LineReader&) = delete;
    LineReader& operator=(const LineReader&) = delete;
    LineReader& operator=(LineReader&&) = delete;

    enum class Got { line, end, stopped, broken };

    /// The next line without its end. Stopped as Interrupt hears it.
    Got next(std::string& line);

    int descriptor() const { return descriptor_; }

private:
    explicit LineReader(int descriptor) : descriptor_(descriptor) {}

    Got fill();

    int descriptor_ = -1;
    std::string block_;
    std::size_t at_ = 0;
    bool ended_ = false;
};

}  // namespace toft::cli
