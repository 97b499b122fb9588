#pragma once
// Pointers of an older revision in the current one. Private to store.

#include "store/fact_place.h"
#include "store/records.h"

#include <map>

namespace toft::store {

inline constexpr std::size_t longest_fact = 400;  ///< bytes

/// Whether a pointer names a place of the job.
bool leads_somewhere(const std::string& fact, const std::string& job);

/// The revision that something new is tied to, the current one for 0; stops the work with
/// `no-such-revision`, or with `bad-pointer` where `fact` is a pointer that leads nowhere in it.
long revision_of_fact(Work& work, const JobRecord& job, const std::string& fact, long revision);

/// Follows pointers into the current revision of one job.
class PlacesNow {
public:
    PlacesNow(Work& work, const JobRecord& job) : work_(work), job_(job) {}

    /// What is no pointer stays as it is.
    FactPlace place(const std::string& fact, long revision);

private:
    Work& work_;
    const JobRecord& job_;
    std::map<long, std::string> texts_;
};

}  // namespace toft::store
