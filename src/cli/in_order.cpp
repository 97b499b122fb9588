#include "cli/in_order.h"

#include <condition_variable>
#include <deque>
#include <mutex>
#include <system_error>
#include <thread>
#include <utility>
#include <vector>

namespace toft::cli {

namespace {

/// Work first, then its result.
struct Slot {
    std::string text;
    bool done = false;
};

class Window {
public:
    explicit Window(const InOrder& order) : order_(order) {}

    bool run() {
        std::vector<std::thread> threads;
        try {
            for (unsigned i = 0; i < order_.threads; ++i) threads.emplace_back([this] { serve(); });
        } catch (const std::system_error&) {
            if (threads.empty()) throw;  // fewer will do, but one there must be
        }
        std::string text;
        while (has_room() && order_.next(text)) add(std::move(text));
        close();
        for (std::thread& thread : threads) thread.join();
        return !full_;
    }

private:
    /// Waits for room; false when nothing more is wanted.
    bool has_room() {
        std::unique_lock lock(mutex_);
        const std::size_t most = held_a_thread * order_.threads;
        room_.wait(lock, [&] { return full_ || stopping_ || slots_.size() < most; });
        return !full_ && !order_.stop();
    }

    void add(std::string&& text) {
        const std::lock_guard lock(mutex_);
        slots_.push_back({std::move(text), false});
        work_.notify_one();
    }

    void close() {
        const std::lock_guard lock(mutex_);
        closed_ = true;
        work_.notify_all();
    }

    void serve() {
        std::unique_lock lock(mutex_);
        for (;;) {
            work_.wait(lock, [&] { return full_ || closed_ || begun_ < slots_.size(); });
            if (order_.stop()) {
                stopping_ = true;
                room_.notify_one();
                return;
            }
            if (full_ || begun_ == slots_.size()) return;
            Slot& slot = slots_[begun_++];
            lock.unlock();
            slot.text = order_.work(slot.text);
            lock.lock();
            slot.done = true;
            put_what_is_ready(lock);
        }
    }

    void put_what_is_ready(std::unique_lock<std::mutex>& lock) {
        if (putting_) return;
        putting_ = true;
        while (!full_ && !slots_.empty() && slots_.front().done) {
            const std::string result = std::move(slots_.front().text);
            lock.unlock();
            const bool taken = order_.put(result);
            lock.lock();
            full_ = !taken;
            slots_.pop_front();
            --begun_;
            room_.notify_one();
        }
        putting_ = false;
        if (full_) work_.notify_all();
    }

    const InOrder& order_;
    std::mutex mutex_;
    std::condition_variable room_, work_;
    std::deque<Slot> slots_;  ///< in order: `begun_` of them begun, from the front
    std::size_t begun_ = 0;
    bool putting_ = false;
    bool closed_ = false;    ///< no more work comes
    bool full_ = false;      ///< no more results are taken
    bool stopping_ = false;  ///< no more work is begun
};

}  // namespace

bool run(const InOrder& order) { return Window(order).run(); }

}  // namespace toft::cli
