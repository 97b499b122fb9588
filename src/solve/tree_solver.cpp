#include "solve/tree_solver.h"

#include "tree/alternatives.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

namespace toft::solve {

namespace {

/// Ways that are remembered, to be recognised where they cost no more.
constexpr std::size_t most_seen = 12;

using study::Corner;
using study::End;

Solution solution_of(const tree::Workplace& at, const tree::Tree& tree, const tree::Followed& way) {
    Solution s;
    for (std::size_t i = 0; i < way.runs.size(); ++i) {
        s.schemes.push_back(way.runs[i].scheme);
        s.key += (i > 0 ? "+" : "") + at.job.runs[tree.order[i].run].id + ":" +
                 study::scheme_key(way.runs[i].scheme);
    }
    s.total = way.total;
    s.headroom = way.headroom;
    s.dependability = way.dependability;
    return s;
}

Solution cheapest_at(const tree::Workplace& at) {
    const tree::Tree tree = tree::tree_of(at);
    tree::Asked asked;
    asked.most_rounds = most_proposals;
    const tree::Best best = tree::cheapest(at, tree, asked);
    Solution s;
    if (best.found) s = solution_of(at, tree, *best.found);
    s.proved = best.proved;
    return s;
}

/// Of ways at that price the one with the most headroom, told apart by steps, as a design lists it.
Solution with_headroom(const tree::Workplace& at, Solution cheapest) {
    const tree::Tree tree = tree::tree_of(at);
    tree::Asked asked;
    asked.most_rounds = most_proposals;
    asked.thorough = false;
    while (cheapest.sound() && cheapest.headroom < tree::most_headroom) {
        const double steps = std::floor(cheapest.headroom / tree::headroom_step + 1e-9) + 1;
        asked.floor.headroom = steps * tree::headroom_step;
        const tree::Best way = tree::cheapest(at, tree, asked);
        if (!way.found || way.found->total > cheapest.total + tree::penny_part) break;
        cheapest = solution_of(at, tree, *way.found);
    }
    return cheapest;
}

Corner all_at(End end) {
    Corner corner;
    corner.all = end;
    return corner;
}

}  // namespace

Solution solve_tree(const Means& means, const site::Job& job) {
    study::GroundMemo memo;
    const tree::Workplace at{means.catalogue, means.book, job, {}, &memo};
    Solution cheapest = cheapest_at(at);
    const bool proved = cheapest.proved;
    cheapest = with_headroom(at, std::move(cheapest));
    cheapest.proved = proved;
    return cheapest;
}

Solution solve_tree_as(const Means& means, const site::Job& job,
                       const std::vector<study::RunScheme>& schemes) {
    study::GroundMemo memo;
    const tree::Workplace at{means.catalogue, means.book, job, {}, &memo};
    const tree::Tree tree = tree::tree_of(at);
    const tree::Followed way = tree::follow(at, tree, schemes, {});
    return way.sound ? solution_of(at, tree, way) : Solution{};
}

TreeSolver::TreeSolver(const Means& means, const site::Job& job, study::GroundMemo& memo, Told told)
    : Solver(means, job), memo_(memo), told_(std::move(told)) {
    const tree::Workplace at = place_at({});
    for (const tree::Place& place : tree::outwards(job)) {
        add_open(tree::RunJudge(at, place.run, 0, nullptr).setting().open);
    }
    Solution first = with_headroom(at, this->at({}));
    if (first.sound()) seen_ = {first};
    known_[reading({})] = first;
    stand(std::move(first));
}

tree::Workplace TreeSolver::place_at(const Corner& corner) const {
    return {means().catalogue, means().book, job(), corner, &memo_};
}

/// How each open fact is read. What is known as a figure is read so at every end.
std::string TreeSolver::reading(const Corner& corner) const {
    std::string said;
    for (const study::OpenFact& fact : open()) {
        const study::Part* part = corner.part_of(fact.pointer);
        const bool figure = part && part->low == part->high;
        said += fmt::format("{};", figure ? -1 : static_cast<int>(corner.at(fact.pointer)));
        if (part) said += fmt::format("{}:{};", part->low, part->high);
    }
    return said;
}

Solution TreeSolver::at(const Corner& corner) const {
    const std::string key = reading(corner);
    const auto known = known_.find(key);
    if (known != known_.end()) return known->second;
    if (stopped_) return as_it_stands();
    Solution s = cheapest_at(place_at(corner));
    if (s.sound()) s = seen_before(corner, std::move(s));
    all_proved_ = all_proved_ && s.proved;
    ++solved_;
    stopped_ = told_ && !told_(solved_);
    return known_.emplace(key, std::move(s)).first->second;
}

/// Of ways at one price that which was met with first, so that what comes to the same is the same.
Solution TreeSolver::seen_before(const Corner& corner, Solution s) const {
    const tree::Workplace at = place_at(corner);
    const tree::Tree tree = tree::tree_of(at);
    for (const Solution& seen : seen_) {
        if (seen.key == s.key) return s;
        const tree::Followed way = tree::follow(at, tree, seen.schemes, {});
        if (!way.sound || way.total > s.total + tree::penny_part) continue;
        const bool proved = s.proved;
        s = solution_of(at, tree, way);
        s.proved = proved;
        return s;
    }
    if (seen_.size() < most_seen) seen_.push_back(s);
    return s;
}

Solution TreeSolver::may_be(const Corner& corner, const std::string& pointer) const {
    Solution best;
    std::vector<End> ends{End::better};
    if (ends_work_against(pointer)) ends = {End::better, End::low, End::high};
    for (const End end : ends) {
        Corner at_end = corner;
        at_end.except.insert(at_end.except.begin(), {pointer, end});
        Solution there = at(at_end);
        if (!there.sound()) continue;
        if (!best.sound() || there.total < best.total - tree::penny_part) best = std::move(there);
    }
    return best;
}

double TreeSolver::price_at(const Corner& corner, const Solution& solution) const {
    const tree::Workplace at = place_at(corner);
    return tree::follow(at, tree::tree_of(at), solution.schemes, {}).total;
}

Solution TreeSolver::hoped_for() const { return at(all_at(End::better)); }

std::vector<std::string> TreeSolver::hangs_on(const Solution& solution) const {
    std::vector<std::string> facts;
    std::vector<std::string> all;
    for (const study::OpenFact& fact : open()) {
        Corner corner = all_at(End::better);
        corner.except.emplace_back(fact.pointer, End::worse);
        const tree::Workplace at = place_at(corner);
        const bool sound = tree::follow(at, tree::tree_of(at), solution.schemes, {}).sound;
        if (!sound) facts.push_back(fact.pointer);
        all.push_back(fact.pointer);
    }
    return facts.empty() ? all : facts;
}

}  // namespace toft::solve
