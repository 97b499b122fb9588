#pragma once
// A job searched once and ready to be solved under any reading of its open facts.

#include "solve/run_solver.h"
#include "study/ground_memo.h"
#include "support/questions.h"

#include <memory>

namespace toft::support {

/// Holds all that a Solver looks at.
class Solving {
public:
    explicit Solving(site::Job job, bool keep_possible = true)
        : job_(std::move(job)),
          found_(search::search(catalogue(), demo_book(), job_, 0, solve::options_for(memo_))) {
        if (!keep_possible) found_.all_possible = false;
        solver_ = std::make_unique<solve::RunSolver>(solve::Means{catalogue(), demo_book()}, job_,
                                                     found_, memo_);
    }

    const site::Job& job() const { return job_; }
    const search::Result& found() const { return found_; }
    const solve::RunSolver& solver() const { return *solver_; }

private:
    site::Job job_;
    study::GroundMemo memo_;
    search::Result found_;
    std::unique_ptr<solve::RunSolver> solver_;
};

/// Any figure of the open range: `share` of the way from its low end to its high one.
inline double within_range(const study::OpenFact& fact, double share) {
    return fact.low + share * (fact.high - fact.low);
}

/// The corner with that fact known to be `value`, all others as in `others`.
inline study::Corner known_as(const study::OpenFact& fact, double value,
                              study::Corner others = {}) {
    if (fact.unit == "no or yes") {
        others.except.emplace_back(fact.pointer, value > 0.5 ? study::End::high : study::End::low);
        return others;
    }
    others.except.emplace_back(fact.pointer, study::End::worse);
    others.within.push_back({fact.pointer, value, value});
    return others;
}

}  // namespace toft::support
