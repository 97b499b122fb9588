#pragma once
// Solving a job of several runs: the cheapest way to build them all (tree::cheapest). Solutions are
// compared by price, whatever the wishes prefer. Page: docs/methods/unknowns.md.

#include "solve/solver.h"
#include "study/ground_memo.h"
#include "tree/best.h"

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace toft::solve {

/// Proposals that are followed through before a solution is called not proved.
inline constexpr long most_proposals = 100;

/// Solves a valid job of several runs: the cheapest whole with its open facts at their worse end;
/// of equally cheap ones that with the most headroom, told apart by steps (tree/alternatives.h).
Solution solve_tree(const Means& means, const site::Job& job);

/// What those schemes, in the order of the tree, come to in a valid job of several runs, its open
/// facts at their worse end; nothing when they are not sound there.
Solution solve_tree_as(const Means& means, const site::Job& job,
                       const std::vector<study::RunScheme>& schemes);

/// Keeps what it has solved: a reading that was asked for before costs nothing. Of ways at one
/// price it gives that which it met first; what stands was met before all others.
class TreeSolver : public Solver {
public:
    /// Told how many wholes have been solved, after each; says whether to go on. May be empty.
    using Told = std::function<bool(long)>;

    /// All must outlive this.
    TreeSolver(const Means& means, const site::Job& job, study::GroundMemo& memo, Told told = {});

    site::Prefer prefer() const override { return site::Prefer::price; }
    bool dear() const override { return true; }
    bool stopped() const override { return stopped_; }
    Solution at(const study::Corner& corner) const override;

    /// With the fact at the better end of its part; where its ends work against each other, the
    /// cheapest of those at the better, the low and the high end.
    Solution may_be(const study::Corner& corner, const std::string& pointer) const override;
    double price_at(const study::Corner& corner, const Solution& solution) const override;

    /// With all facts at their better end; not sound where nothing is to be hoped for.
    Solution hoped_for() const;

    /// Pointers of facts that at their worse end alone, all others at their better, break the
    /// solution; of all facts where none does.
    std::vector<std::string> hangs_on(const Solution& solution) const;

    /// Wholes solved so far, and whether each was proved to be the cheapest.
    long solved() const { return solved_; }
    bool all_proved() const { return all_proved_; }

private:
    tree::Workplace place_at(const study::Corner& corner) const;
    std::string reading(const study::Corner& corner) const;
    Solution seen_before(const study::Corner& corner, Solution solution) const;

    study::GroundMemo& memo_;
    Told told_;
    mutable std::map<std::string, Solution> known_;  ///< by reading
    mutable std::vector<Solution> seen_;             ///< as it stands first
    mutable long solved_ = 0;
    mutable bool all_proved_ = true;
    mutable bool stopped_ = false;
};

}  // namespace toft::solve
