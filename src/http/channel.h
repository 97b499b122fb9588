#pragma once
// Text that goes to one listener as it comes, from any thread: an event stream.

#include <atomic>
#include <functional>
#include <mutex>
#include <string>
#include <string_view>

namespace toft::server {

/// Bytes that may wait for a slow listener; who falls further behind is taken as gone.
inline constexpr std::size_t longest_backlog = 4u << 20;

class Channel {
public:
    /// An event with its data, JSON; between its words a line break becomes a blank.
    void event(std::string_view name, std::string_view data);
    /// Nothing more comes.
    void end();
    /// Nobody listens any more.
    bool gone() const { return gone_; }

    /// For the listener's side: `wake` is called when there is something to take.
    void wake_by(std::function<void()> wake);
    /// What waits, and whether it is the last.
    struct Taken {
        std::string text;
        bool last = false;
    };
    Taken take();
    void leave();

private:
    void call();

    mutable std::mutex mutex_;
    std::string waiting_;
    bool ended_ = false;
    std::atomic<bool> gone_ = false;
    std::function<void()> wake_;
};

}  // namespace toft::server
