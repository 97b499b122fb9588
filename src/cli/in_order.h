#pragma once
// Many pieces of work on many threads, their results in the order in which the work came, and never
// more than a few pieces held at once.

#include <functional>
#include <string>

namespace toft::cli {

struct InOrder {
    unsigned threads = 1;  ///< at least 1
    /// The next piece; false when there is none. Asked by the caller's thread.
    std::function<bool(std::string&)> next;
    /// By any thread, several at once.
    std::function<std::string(const std::string&)> work;
    /// A result, by one thread at a time; false when no more can be taken.
    std::function<bool(const std::string&)> put;
    /// True when no more is to be begun; what was begun is finished and put.
    std::function<bool()> stop;
};

/// Pieces held at once for each thread: read, being worked on, or waiting for one before them.
inline constexpr std::size_t held_a_thread = 8;

/// False when `put` was.
bool run(const InOrder& order);

}  // namespace toft::cli
