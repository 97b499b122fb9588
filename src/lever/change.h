#pragma once
// A lever: one single change on site or in the wishes that the survey allows. Each idea is a pure
// function from a job to the changed jobs it can make of it; where it does not apply there are
// none. Page: docs/methods/levers.md.

#include "site/job.h"
#include "tables/catalogue.h"

#include <string>
#include <vector>

namespace toft::lever {

/// What an idea looks at: a valid job and the tables.
struct Ground {
    const tables::Catalogue& catalogue;
    const site::Job& job;
    std::size_t run = 0;

    const site::Run& feed() const { return job.runs[run]; }
    /// Place in the job's list of the building that the run feeds.
    std::size_t place() const { return site::building_index(job, feed().to); }
    const site::Building& building() const { return job.buildings[place()]; }
};

/// The job after one change.
struct Change {
    std::string key;    ///< row of data/lever/lever.csv
    std::string where;  ///< what the row's words name: a leg, a pipe, a load
    site::Job job;
    bool widens = false;              ///< it lets the search choose what the survey had left out
    std::size_t count = 1;            ///< how many of its kind are made at once
    std::vector<std::size_t> runs{};  ///< that it is made at; empty: the house, or the wishes
};

using Changes = std::vector<Change>;
using Idea = Changes (*)(const Ground&);

/// A fact as whoever makes the change would state it.
template <class Q>
site::Fact<Q> stated(Q value) {
    return {true, value, value, site::Standing::declared};
}

/// Name of the building, or its id.
std::string name_of(const site::Building& building);

/// The figure that the tables set for a lever; the row and its value must exist.
double value_of(const Ground& ground, const char* key);

}  // namespace toft::lever
