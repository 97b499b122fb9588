#pragma once
// Who wants to hear of new revisions of a job.

#include "http/channel.h"

#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <vector>

namespace toft::server {

/// Where one device hears of one job.
struct Ear {
    std::weak_ptr<Channel> channel;
    std::string device;
};

/// For any thread.
class Listeners {
public:
    /// `device` is the short name of a paired one; empty for this machine.
    std::shared_ptr<Channel> listen(const std::string& job, const std::string& device);
    void tell(const std::string& job, std::string_view event, std::string_view data);
    /// Ends all that a device hears.
    void put_out(const std::string& device);

private:
    std::mutex mutex_;
    std::map<std::string, std::vector<Ear>> of_job_;
};

}  // namespace toft::server
