#pragma once
// Solving one job again and again: the same survey under many readings of its open facts, or a
// changed survey as it stands. Page: docs/methods/unknowns.md.

#include "solve/solution.h"

#include <vector>

namespace toft::solve {

/// What every solution is worked out from. Both must outlive whoever holds them.
struct Means {
    const tables::Catalogue& catalogue;
    const price::Book& book;
};

/// Solves a valid job: what holds whatever its open facts turn out to be.
Solution solve(const Means& means, const site::Job& job);

/// What that scheme comes to in a valid job, its open facts at their worse end; nothing when it is
/// not sound there.
Solution solve_as(const Means& means, const site::Job& job, const study::RunScheme& scheme);

/// A job under many readings of its open facts. Where the search has given every scheme that may
/// come first at some corner, only those are judged; else the search is run again. Both give the
/// same solution (tests).
class Solver {
public:
    /// `found` is the search of `job` as things stand, run with `possible`; all must outlive this.
    Solver(const Means& means, const site::Job& job, const search::Result& found,
           study::GroundMemo& memo);

    const Means& means() const { return means_; }
    const site::Job& job() const { return job_; }
    const std::vector<study::OpenFact>& open() const { return open_; }

    /// As things stand: every open fact at its worse end.
    const Solution& as_it_stands() const { return stands_; }

    /// The first scheme that meets every rule with the facts read as the corner says.
    Solution at(const study::Corner& corner) const;

    /// The first scheme that may meet every rule with the fact of that pointer somewhere in its
    /// part of the range and all others as the corner says: each rule at the better, the low or the
    /// high end of it. Its price is that at the better end. Nothing that is sound with the fact at
    /// any figure there comes before it, but where headroom is preferred.
    Solution may_be(const study::Corner& corner, const std::string& pointer) const;

    /// Price with tax of a scheme at that corner, with what must be put right there; pounds.
    double price_at(const study::Corner& corner, const study::RunScheme& scheme) const;

    /// A setting of the job with the open facts at their worse end, for that number of phases.
    const study::Setting<Silent>& setting(int phases) const;

private:
    /// By number of phases.
    using Settings = std::vector<study::Setting<Silent>>;

    /// The first of `all` that meets each rule in one of `ends`, at the price of the first of them;
    /// none where that takes more judgements than `most`.
    std::optional<Solution> first_of(const std::vector<search::Possible>& all,
                                     const std::vector<Settings>& ends, std::size_t most) const;
    search::Result searched(const study::Corner& corner, const std::string& open) const;
    Settings settings_at(const study::Corner& corner) const;

    Means means_;
    const site::Job& job_;
    study::GroundMemo& memo_;
    std::vector<study::Setting<Silent>> worse_;  ///< by number of phases
    std::vector<study::OpenFact> open_;
    Solution stands_;
    bool all_possible_ = false;
    std::vector<search::Possible> possible_;  ///< as dependability asks, then by least price
};

/// Options for the search whose result a Solver takes.
search::Options options_for(study::GroundMemo& memo);

}  // namespace toft::solve
