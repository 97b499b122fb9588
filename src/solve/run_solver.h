#pragma once
// Solving a job of one run. Page: docs/methods/unknowns.md.

#include "search/search.h"
#include "solve/solver.h"

#include <functional>
#include <optional>
#include <vector>

namespace toft::solve {

/// Solves a valid job of one run: what holds whatever its open facts turn out to be.
Solution solve_run(const Means& means, const site::Job& job);

/// What that scheme comes to in a valid job of one run, its open facts at their worse end; nothing
/// when it is not sound there.
Solution solve_run_as(const Means& means, const site::Job& job, const study::RunScheme& scheme);

/// Where the search has given every scheme that may come first at some corner, only those are
/// judged; else the search is run again. Both give the same solution (tests).
class RunSolver : public Solver {
public:
    /// `found` is the search of `job` as things stand, run with `possible`; all must outlive this.
    /// `go_on` is asked now and then; once it says no, no more is solved. May be empty.
    RunSolver(const Means& means, const site::Job& job, const search::Result& found,
              study::GroundMemo& memo, std::function<bool()> go_on = {});

    site::Prefer prefer() const override { return job().wishes.prefer; }
    bool dear() const override { return false; }
    bool stopped() const override;
    Solution at(const study::Corner& corner) const override;

    /// Each rule at the better, the low or the high end of the part; the price is that at the
    /// better end.
    Solution may_be(const study::Corner& corner, const std::string& pointer) const override;
    double price_at(const study::Corner& corner, const Solution& solution) const override;

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

    study::GroundMemo& memo_;
    std::function<bool()> go_on_;
    mutable bool stopped_ = false;
    std::vector<study::Setting<Silent>> worse_;  ///< by number of phases
    bool all_possible_ = false;
    std::vector<search::Possible> possible_;  ///< as dependability asks, then by least price
};

/// Options for the search whose result a RunSolver takes.
search::Options options_for(study::GroundMemo& memo);

}  // namespace toft::solve
