#pragma once
// One line that tells how far long work has come, for a person at a terminal.

#include "cli/interrupt.h"

#include <functional>
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

/// Long work, watched: at a terminal it says how far it has come, and Ctrl-C stops it.
class Watch {
public:
    /// False once it was asked to stop. `words` are asked for when it is time to show them.
    bool goes_on(const std::function<std::string()>& words) {
        if (Interrupt::heard()) return false;
        if (line_.due()) line_.show(words() + "; Ctrl-C: the best so far");
        return true;
    }

    /// Nothing stands on the line any more.
    void end() { line_.clear(); }

private:
    Interrupt interrupt_;
    ProgressLine line_;
};

}  // namespace toft::cli
