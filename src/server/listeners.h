#pragma once
// Who wants to hear of new revisions of a job.

#include "http/channel.h"

#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <vector>

namespace toft::server {

/// For any thread.
class Listeners {
public:
    std::shared_ptr<Channel> listen(const std::string& job);
    void tell(const std::string& job, std::string_view event, std::string_view data);

private:
    std::mutex mutex_;
    std::map<std::string, std::vector<std::weak_ptr<Channel>>> of_job_;
};

}  // namespace toft::server
