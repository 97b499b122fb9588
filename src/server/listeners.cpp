#include "server/listeners.h"

#include <algorithm>

namespace toft::server {

namespace {

void drop_gone(std::vector<Ear>& all) {
    all.erase(std::remove_if(all.begin(), all.end(),
                             [](const Ear& one) {
                                 const auto channel = one.channel.lock();
                                 return !channel || channel->gone();
                             }),
              all.end());
}

}  // namespace

std::shared_ptr<Channel> Listeners::listen(const std::string& job, const std::string& device) {
    auto channel = std::make_shared<Channel>();
    const std::lock_guard lock(mutex_);
    auto& all = of_job_[job];
    drop_gone(all);
    all.push_back({channel, device});
    return channel;
}

void Listeners::tell(const std::string& job, std::string_view event, std::string_view data) {
    std::vector<std::shared_ptr<Channel>> now;
    {
        const std::lock_guard lock(mutex_);
        const auto found = of_job_.find(job);
        if (found == of_job_.end()) return;
        drop_gone(found->second);
        for (const Ear& one : found->second) {
            if (auto channel = one.channel.lock()) now.push_back(std::move(channel));
        }
        if (now.empty()) of_job_.erase(found);
    }
    for (const auto& channel : now) channel->event(event, data);
}

void Listeners::put_out(const std::string& device) {
    std::vector<std::shared_ptr<Channel>> theirs;
    {
        const std::lock_guard lock(mutex_);
        for (const auto& [job, all] : of_job_) {
            for (const Ear& one : all) {
                auto channel = one.device == device ? one.channel.lock() : nullptr;
                if (channel) theirs.push_back(std::move(channel));
            }
        }
    }
    for (const auto& channel : theirs) channel->end();
}

}  // namespace toft::server
