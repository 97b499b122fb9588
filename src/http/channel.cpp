#include "http/channel.h"

namespace toft::server {

void Channel::event(std::string_view name, std::string_view data) {
    {
        const std::lock_guard lock(mutex_);
        if (gone_ || ended_) return;
        waiting_ += "event: ";
        waiting_ += name;
        waiting_ += "\ndata: ";
        for (const char c : data) waiting_ += c == '\n' ? ' ' : c;
        waiting_ += "\n\n";
        if (waiting_.size() > longest_backlog) gone_ = true;
    }
    call();
}

void Channel::end() {
    {
        const std::lock_guard lock(mutex_);
        ended_ = true;
    }
    call();
}

void Channel::wake_by(std::function<void()> wake) {
    const std::lock_guard lock(mutex_);
    wake_ = std::move(wake);
}

Channel::Taken Channel::take() {
    const std::lock_guard lock(mutex_);
    Taken taken{std::move(waiting_), ended_ || gone_};
    waiting_.clear();
    return taken;
}

void Channel::leave() {
    gone_ = true;
    wake_by({});
}

void Channel::call() {
    std::function<void()> wake;
    {
        const std::lock_guard lock(mutex_);
        wake = wake_;
    }
    if (wake) wake();
}

}  // namespace toft::server
