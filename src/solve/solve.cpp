#include "solve/solve.h"

#include "solve/run_solver.h"
#include "solve/tree_solver.h"

namespace toft::solve {

Solution solve(const Means& means, const site::Job& job) {
    return job.runs.size() > 1 ? solve_tree(means, job) : solve_run(means, job);
}

Solution solve_as(const Means& means, const site::Job& job,
                  const std::vector<study::RunScheme>& schemes) {
    return job.runs.size() > 1 ? solve_tree_as(means, job, schemes)
                               : solve_run_as(means, job, schemes.front());
}

}  // namespace toft::solve
