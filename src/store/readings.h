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
    std::string fact;  ///< JSON pointer into `revision`, or the name of a test
    double value = 0;  ///< finite
    std::string unit;  ///< as the instrument shows it: "ohm", "Mohm", "ms"
    std::string instrument;
    std::string note;
    long revision = 0;  ///< that whoever read it had before them; 0 for the current one
    std::string
        id{};  ///< what whoever sends it calls it, so that it may be sent twice; may be empty
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

/// One whose id is here already is not kept again: it is the answer. Faults: `no-such-job`,
/// `no-such-revision`, `bad-pointer` (empty or over 400 bytes), `bad-id`, `bad-value` (no number),
/// `too-long` (unit, instrument or note over 2000 bytes), all at once; `taken`: the id is that of a
/// reading of another job.
Outcome<Reading> add_reading(Store& store, const NewReading& reading, const Act& act);

/// All of a job, oldest first. Faults: `no-such-job`.
Outcome<std::vector<Reading>> readings(Store& store, const std::string& job);

}  // namespace toft::store
