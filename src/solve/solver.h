#pragma once
// Solving one job again and again: the same survey under many readings of its open facts. How it
// is done hangs on whether the job has one run or several. Page: docs/methods/unknowns.md.

#include "price/book.h"
#include "site/job.h"
#include "solve/solution.h"
#include "study/corner.h"
#include "tables/catalogue.h"

#include <string>
#include <vector>

namespace toft::solve {

/// What every solution is worked out from. Both must outlive whoever holds them.
struct Means {
    const tables::Catalogue& catalogue;
    const price::Book& book;
};

/// Whether a fact bounds loops and fault currents at the intake against each other, so that no end
/// of its range need be the best there is. Of every other fact no figure is better, for any rule,
/// than its better end: each figure that follows from it is bounded from both sides, and rules read
/// the side that is worse for them (tests).
inline bool ends_work_against(const std::string& pointer) {
    return pointer.rfind("/intake/", 0) == 0;
}

/// A job under many readings of its open facts. The job must outlive it.
class Solver {
public:
    virtual ~Solver() = default;
    Solver(const Solver&) = delete;
    Solver& operator=(const Solver&) = delete;

    const Means& means() const { return means_; }
    const site::Job& job() const { return job_; }

    /// Each once.
    const std::vector<study::OpenFact>& open() const { return open_; }

    /// As things stand: every open fact at its worse end.
    const Solution& as_it_stands() const { return stands_; }

    /// What is first among sound schemes: by this, then by price.
    virtual site::Prefer prefer() const = 0;

    /// Whoever asks wants no more: what is solved from now on says nothing.
    virtual bool stopped() const { return false; }

    /// A solution takes so long that several facts are looked at in one where that is enough.
    virtual bool dear() const = 0;

    /// The first scheme that meets every rule with the facts read as the corner says.
    virtual Solution at(const study::Corner& corner) const = 0;

    /// The first scheme that may meet every rule with the fact of that pointer somewhere in its
    /// part of the range and all others as the corner says. Nothing that is sound with the fact at
    /// any figure there comes before it, but where headroom is preferred.
    virtual Solution may_be(const study::Corner& corner, const std::string& pointer) const = 0;

    /// Price with tax of a sound solution at that corner, with what must be put right there;
    /// pounds.
    virtual double price_at(const study::Corner& corner, const Solution& solution) const = 0;

protected:
    Solver(const Means& means, const site::Job& job) : means_(means), job_(job) {}

    /// Adds facts that are not yet known to be open.
    void add_open(const std::vector<study::OpenFact>& facts) {
        for (const study::OpenFact& fact : facts) {
            bool known = false;
            for (const study::OpenFact& other : open_) known |= other.pointer == fact.pointer;
            if (!known) open_.push_back(fact);
        }
    }
    void stand(Solution solution) { stands_ = std::move(solution); }

private:
    Means means_;
    const site::Job& job_;
    std::vector<study::OpenFact> open_;
    Solution stands_;
};

}  // namespace toft::solve
