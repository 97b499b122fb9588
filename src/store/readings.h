#pragma once
// What was measured on site, each tied to a fact of a job. Nothing is judged here.

#include "base/outcome.h"
#include "store/act.h"
#include "store/fact_place.h"

#include <string>
#include <vector>

namespace toft::store {

struct NewReading {
    std::string job;   ///< its id
    std::string fact;  ///< JSON pointer into the current revision, or the name of a test
    double value = 0;  ///< finite
    std::string unit;  ///< as the instrument shows it: "ohm", "Mohm", "ms"
    std::string instrument;
    std::string note;
};

struct Reading {
    long reading = 0;  ///< number in this store, never given twice
    std::string job;
    FactPlace place;
    double value = 0;
    std::string unit;
    std::string instrument;
    std::string note;
    std::string at;
    std::string by;
};

/// Faults: `no-such-job`, `bad-pointer` (empty or over 400 bytes), `bad-value` (no number),
/// `too-long` (unit, instrument or note over 2000 bytes), all at once.
Outcome<Reading> add_reading(Store& store, const NewReading& reading, const Act& act);

/// All of a job, oldest first. Faults: `no-such-job`.
Outcome<std::vector<Reading>> readings(Store& store, const std::string& job);

}  // namespace toft::store
