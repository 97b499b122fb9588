#pragma once
// Being asked to stop: Ctrl-C, or whoever manages processes.

namespace toft::cli {

/// For as long as it lives, the first SIGINT or SIGTERM is only noted; the next ends the program at
/// once. What was ignored when the program started stays ignored. One at a time.
class Interrupt {
public:
    Interrupt();
    ~Interrupt();
    Interrupt(const Interrupt&) = delete;
    Interrupt& operator=(const Interrupt&) = delete;

    /// Asked to stop; for any thread.
    static bool heard();

    /// Waits until `descriptor` can be read. False when asked to stop first.
    static bool wait_to_read(int descriptor);
};

}  // namespace toft::cli
