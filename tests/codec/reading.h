#pragma once
// Reading jobs in tests: what loads, and what is said of what does not.

#include "codec/job.h"
#include "codec/schema_walk.h"
#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::codec {

/// All faults of a text; none when it loads.
inline Faults faults_in(const std::string& text) {
    const auto read = read_job(text, support::catalogue());
    return read ? Faults{} : read.error();
}

inline Faults faults_of(const Tree& job) { return faults_in(job.dump()); }

/// The job of a text that must load.
inline site::Job loaded(const Tree& job) {
    auto read = read_job(job.dump(), support::catalogue());
    if (read) return std::move(*read);
    for (const Fault& fault : read.error()) ADD_FAILURE() << fault.pointer << ": " << fault.says;
    return {};
}

/// "pointer code" of each fault, in order.
inline std::vector<std::string> gist(const Faults& faults) {
    std::vector<std::string> lines;
    for (const Fault& fault : faults) {
        EXPECT_FALSE(fault.says.empty()) << fault.pointer;
        lines.push_back(fault.pointer + " " + fault.code);
    }
    return lines;
}

using Gist = std::vector<std::string>;

/// The small job with `value` at `pointer`.
inline Tree small_with(const std::string& pointer, Tree value) {
    Tree job = small_job();
    job[Pointer(pointer)] = std::move(value);
    return job;
}

}  // namespace toft::codec
