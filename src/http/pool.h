#pragma once
// A few threads that do what waits in a line of bounded length.

#include <chrono>
#include <condition_variable>
#include <cstddef>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>
#include <vector>

namespace toft::server {

class Pool {
public:
    Pool(unsigned threads, std::size_t longest);
    /// Finishes what was begun; what still waits is dropped.
    ~Pool();
    Pool(const Pool&) = delete;
    Pool& operator=(const Pool&) = delete;

    /// False when too many wait already.
    bool give(std::function<void()> task);
    /// Waits that long at most; whether nothing is being done any more. What waits is dropped.
    bool ended_within(std::chrono::seconds time);
    void stop();

private:
    void work();

    std::mutex mutex_;
    std::condition_variable something_;
    std::deque<std::function<void()>> waiting_;
    std::size_t longest_;
    bool stopping_ = false;
    std::size_t busy_ = 0;
    std::condition_variable idle_;
    std::vector<std::thread> threads_;
};

}  // namespace toft::server
