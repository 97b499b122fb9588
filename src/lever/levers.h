#pragma once
// Every change that the survey allows, solved anew, with what it saves against what it costs. The
// changed job is solved as if it had been surveyed so; nothing is guessed from the old answer.
// Page: docs/methods/levers.md.

#include "lever/change.h"
#include "solve/solver.h"

#include <optional>

namespace toft::lever {

/// What a change by itself costs, beside what the changed job's price holds.
enum class Cost { in_the_price, of_the_book, not_priced };

struct Lever {
    std::string key;    ///< row of data/lever/lever.csv
    std::string words;  ///< what to do
    site::Job job;      ///< with the change made
    solve::Solution after;
    bool opens = false;  ///< nothing was sound before
    double saves = 0;    ///< pounds with tax that the new scheme is cheaper; below 0: dearer
    Cost costs = Cost::in_the_price;
    std::optional<double> cost;  ///< pounds with tax; none where it is not priced
    bool already = false;        ///< dearer than before, and does as well without the change
    double headroom = 0;         ///< gained
    double dependability = 0;    ///< gained

    /// What is saved once the change is paid; none where that has no price.
    std::optional<double> net() const;
};

struct Weighed {
    solve::Solution before;
    std::vector<Lever> levers;  ///< those worth saying: first what opens a way, then by net saving,
                                ///< then what has no price
    std::size_t tried = 0;      ///< changes that the survey allows
};

/// Solves the (valid) job under every change of its first run.
Weighed weigh(const solve::Means& means, const site::Job& job);

/// One change weighed against `job` as it is, which comes to `before`, whether or not it is worth
/// saying.
Lever weighed(const solve::Means& means, const site::Job& job, const solve::Solution& before,
              const Change& change);

/// Whether it opens a way, saves money, or brings headroom or a sturdier earth at little cost.
bool worth_saying(const tables::LeverWorth& worth, const solve::Solution& before,
                  const Lever& lever);

}  // namespace toft::lever
