#include "http/pool.h"

namespace toft::server {

Pool::Pool(unsigned threads, std::size_t longest) : longest_(longest) {
    for (unsigned i = 0; i < threads; ++i) threads_.emplace_back([this] { work(); });
}

Pool::~Pool() { stop(); }

bool Pool::give(std::function<void()> task) {
    {
        const std::lock_guard lock(mutex_);
        if (stopping_ || waiting_.size() >= longest_) return false;
        waiting_.push_back(std::move(task));
    }
    something_.notify_one();
    return true;
}

bool Pool::ended_within(std::chrono::seconds time) {
    std::unique_lock lock(mutex_);
    stopping_ = true;
    waiting_.clear();
    something_.notify_all();
    return idle_.wait_for(lock, time, [this] { return busy_ == 0; });
}

void Pool::stop() {
    {
        const std::lock_guard lock(mutex_);
        stopping_ = true;
        waiting_.clear();
    }
    something_.notify_all();
    for (std::thread& thread : threads_) {
        if (thread.joinable()) thread.join();
    }
}

void Pool::work() {
    for (;;) {
        std::function<void()> task;
        {
            std::unique_lock lock(mutex_);
            something_.wait(lock, [this] { return stopping_ || !waiting_.empty(); });
            if (stopping_) return;
            task = std::move(waiting_.front());
            waiting_.pop_front();
            ++busy_;
        }
        task();
        const std::lock_guard lock(mutex_);
        if (--busy_ == 0) idle_.notify_all();
    }
}

}  // namespace toft::server
