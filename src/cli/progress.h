#pragma once
// One line that tells how far long work has come, for a person at a terminal.

#include <string>

namespace toft::cli {

/// Shows nothing where standard error is no terminal, nor in the first second. Not for several
/// threads at once.
class ProgressLine {
public:
    ProgressLine();
    ~ProgressLine() { clear(); }
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    /// Whether it is time to show something anew.
    bool due() const;

    /// In place of what stands there; cut to a screen's width.
    void show(const std::string& text);

    /// Leaves the line empty.
    void clear();

    double seconds() const;  ///< since it was made

private:
    bool terminal_ = false;
    bool shown_ = false;
    double began_ = 0;
    double last_ = 0;
};

}  // namespace toft::cli
