#pragma once
// Every change that the survey allows, solved anew, with what it saves against what it costs. The
// changed job is solved as if it had been surveyed so; nothing is guessed from the old answer.
// Page: docs/methods/levers.md.

#include "lever/change.h"
#include "solve/solver.h"

#include <functional>
#include <optional>

namespace toft::lever {

/// What a change by itself costs, beside what the changed job's price holds.
enum class Cost { in_the_price, of_the_book, not_priced };

/// One of several places of a change, made there alone.
struct Singly {
    std::size_t run = 0;
    double brings = 0;  ///< pounds with tax: net, or what it saves where it has no price
};

struct Lever {
    std::string key;                ///< row of data/lever/lever.csv
    std::string words;              ///< what to do
    std::vector<std::size_t> runs;  ///< that it is made at; empty: the house, or the wishes
    std::vector<Singly> singly;     ///< of a change at several places, what each brings alone
    site::Job job;                  ///< with the change made
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
    std::size_t tried = 0;      ///< changes that the survey allows, each place for itself
    bool stopped = false;       ///< before all of them were
    bool proved = true;         ///< each job was proved to come to no less, or to nothing
};

/// Told how many changed jobs have been solved, after each; says whether to go on. May be empty.
using Told = std::function<bool(long)>;

/// Solves the (valid) job under every change that its survey allows. What several runs allow alike
/// is also made at all of them, and at those at which it pays: where that brings more than the
/// best of the places alone, it stands for all of them.
Weighed weigh(const solve::Means& means, const site::Job& job, const Told& told = {});

/// One change weighed against `job` as it is, which comes to `before`, whether or not it is worth
/// saying.
Lever weighed(const solve::Means& means, const site::Job& job, const solve::Solution& before,
              const Change& change);

/// Whether it opens a way, saves money, or brings headroom or a sturdier earth at little cost.
bool worth_saying(const tables::LeverWorth& worth, const solve::Solution& before,
                  const Lever& lever);

}  // namespace toft::lever
