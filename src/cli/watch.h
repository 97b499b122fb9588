#pragma once
// Long work, watched: at a terminal it says how far it has come, and Ctrl-C stops it.

#include "cli/interrupt.h"
#include "cli/progress.h"

#include <functional>
#include <string>

namespace toft::cli {

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
