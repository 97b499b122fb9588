#pragma once
// A job with all that hangs on it, on its way from one store to another. Private to store.

#include "store/attached.h"
#include "store/checks.h"
#include "store/jobs.h"
#include "store/settings.h"

#include <functional>
#include <optional>
#include <string_view>
#include <vector>

namespace toft::store {

/// A revision and how it hangs together with others.
struct ParcelRevision {
    long revision = 0;
    std::optional<long> parent;
    std::optional<long> redo;
    Act act;
    std::string text;
};

template <class T>
struct Attached {
    T what;
    long revision = 0;
    Act act;
};

struct Parcel {
    std::string id;
    bool archived = false;
    long current = 0;
    Act changed;
    std::vector<ParcelRevision> revisions;  ///< in the order of their numbers
    std::vector<Attached<NewPhoto>> photos;
    std::vector<Attached<NewReading>> readings;
    std::vector<Attached<NewIssue>> issues;
};

struct Parcels {
    std::vector<Parcel> jobs;
    std::optional<OwnPrices> prices;
};

/// All of a job as the file has it; `no-such-job` stops the work.
Parcel parcel_of(Work& work, const std::string& id);

/// One job as an object of `toft-store/1`, JSON text.
std::string parcel_text(const Parcel& parcel);

/// All of a text, or every fault of it.
Outcome<Parcels> read_parcels(std::string_view text,
                              const std::function<Faults(const OwnPrices&)>& book_faults);

}  // namespace toft::store
