#pragma once
// What one idea makes of a job.

#include "lever/ideas.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <string>
#include <vector>

namespace toft::lever {

inline Changes changes_of(Idea idea, const site::Job& job) {
    return idea({support::catalogue(), job});
}

inline std::vector<std::string> keys_of(Idea idea, const site::Job& job) {
    std::vector<std::string> keys;
    for (const Change& change : changes_of(idea, job)) keys.push_back(change.key);
    return keys;
}

inline const Change* change_of(const Changes& all, const std::string& key) {
    for (const Change& change : all) {
        if (change.key == key) return &change;
    }
    return nullptr;
}

}  // namespace toft::lever
