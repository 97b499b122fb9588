#include "spread/solve.h"

#include "base/limit.h"
#include "spread/check.h"
#include "spread/core.h"
#include "spread/pass.h"

#include <algorithm>
#include <cmath>

namespace toft::spread {

namespace {

constexpr int first_steps = 25;
constexpr int last_steps = 400;
constexpr std::uint64_t few_each = 20;  ///< offers a branch worth trying on a first bound
constexpr std::size_t first_cap = 60;
constexpr std::size_t cap_grows = 16;
constexpr std::size_t uncapped = static_cast<std::size_t>(-1);
constexpr std::uint64_t endless = std::numeric_limits<std::uint64_t>::max();
constexpr std::uint64_t worth_a_try = 4;  ///< times the offers of the first passes
constexpr std::uint64_t least_worth = 500000;
constexpr double first_share = 0.02;

double guard_of(const Compact& compact, const Slopes& slopes) {
    double sum = 0;
    for (std::size_t t = 0; t < compact.twigs.size(); ++t) {
        sum += std::fabs(slopes.own[t]);
        double dearest = 0;
        for (const Choice& choice : compact.twigs[t].choices) {
            dearest = std::max(dearest, choice.price);
        }
        sum += dearest;
    }
    return 1e-12 * sum;
}

std::vector<std::size_t> options_of(const Compact& compact, const Trial& trial) {
    std::vector<std::size_t> chosen(compact.twigs.size() + compact.settled.size());
    for (std::size_t t = 0; t < trial.picks.size(); ++t) {
        const Twig& twig = compact.twigs[t];
        chosen[twig.branch] = twig.choices[trial.picks[t]].option;
    }
    for (const auto& [branch, option] : compact.settled) chosen[branch] = option;
    return chosen;
}

/// First a pass with a cap, for a good solution; then passes that leave nothing out below a target,
/// which rises from the bound until a solution is found.
class Search {
public:
    Search(const Compact& compact, const Patience& patience)
        : compact_(compact), patience_(patience) {
        slopes_.least = -no_limit;
        use(bounded(compact, first_steps));
    }

    Answer run() {
        if (!std::isfinite(slopes_.least)) return answer(Standing::impossible);
        if (price_ < no_limit && finds_all(price_, few_each * compact_.twigs.size())) {
            return answer(ended());
        }
        use(bounded(compact_));
        double known = least_;
        for (std::size_t cap = first_cap;; cap *= cap_grows) {
            const Passed passed = look(price_, cap, endless);
            if (passed.stopped) return answer(Standing::stopped);
            const bool all = passed.cut == no_limit || passed.cut > price_ + guard_;
            if (all) return answer(ended());
            raise(passed.cut);
            known = std::max(least_, passed.least);
            if (price_ < no_limit) break;
        }
        if (finds_all(price_, worth_a_try * offers_)) return answer(ended());
        use(bounded(compact_, last_steps, price_));
        return rise(std::max(known, least_));
    }

private:
    void use(Bounded bounded) {
        if (bounded.slopes.least > slopes_.least) slopes_ = std::move(bounded.slopes);
        if (bounded.best.price < price_) take(compact_, bounded.best);
        least_ = std::max(least_, slopes_.least);
        guard_ = guard_of(compact_, slopes_);
    }

    /// Targets from `known` on until a solution is found. A step that asks for too many offers is
    /// halved, and the next may ask for more.
    Answer rise(double known) {
        double step = first_share * (price_ - known);
        std::uint64_t most_offers = std::max(least_worth, worth_a_try * offers_);
        while (!gave_up_) {
            const double target = std::min(price_, known + step);
            if (finds_all(target, most_offers)) return answer(ended());
            if (least_ >= target) {
                known = target;
                step *= 2;
            } else {
                step /= 2;
                most_offers *= 2;
            }
        }
        return answer(Standing::stopped);
    }

    /// Whether everything up to `target` was looked at and the best is there.
    bool finds_all(double target, std::uint64_t most_offers) {
        const Passed passed = look(target, uncapped, most_offers);
        if (passed.stopped) return false;
        if (price_ <= target) return true;
        raise(target);
        return false;
    }

    /// One pass for solutions up to `target`; keeps the best.
    Passed look(double target, std::size_t cap, std::uint64_t most_offers) {
        PassOrder order{cap, target, guard_, {}};
        order.go_on = [this, most_offers](std::uint64_t offers) {
            gave_up_ = gave_up_ || !may_go_on(offers);
            return !gave_up_ && offers <= most_offers;
        };
        const Core core = core_of(compact_, slopes_, target + guard_ - slopes_.least);
        Passed passed;
        passed.least = core.slopes.least;
        if (core.compact.impossible) return passed;
        passed = pass(core.compact, planned(core.compact), core.slopes, order);
        offers_ += passed.offers;
        if (!passed.best.picks.empty() && passed.best.price <= price_) {
            take(core.compact, passed.best);
        }
        return passed;
    }

    void take(const Compact& compact, const Trial& trial) {
        chosen_ = options_of(compact, trial);
        price_ = trial.price;
    }

    void raise(double least) { least_ = std::max(least_, std::min(least, price_)); }

    Standing ended() const { return chosen_.empty() ? Standing::impossible : Standing::proved; }

    bool may_go_on(std::uint64_t offers) const {
        const std::uint64_t all = offers_ + offers;
        if (all > patience_.most_offers) return false;
        return !patience_.go_on || patience_.go_on({all, price_, std::max(least_, 0.0)});
    }

    Answer answer(Standing standing) const {
        Answer answer;
        answer.standing = standing;
        answer.offers = offers_;
        answer.price = price_;
        answer.chosen = chosen_;
        const double least = standing == Standing::stopped ? least_ : price_;
        answer.at_least = std::max(0.0, std::min(least, price_));
        return answer;
    }

    const Compact& compact_;
    const Patience& patience_;
    Slopes slopes_;
    std::vector<std::size_t> chosen_;
    double price_ = no_limit;
    double least_ = 0;
    double guard_ = 0;
    bool gave_up_ = false;  ///< the caller did
    std::uint64_t offers_ = 0;
};

}  // namespace

Outcome<Answer> solve(const Problem& problem, const Patience& patience) {
    Faults faults = faults_of(problem);
    if (!faults.empty()) return failed(std::move(faults));
    Answer answer;
    if (problem.branches.empty()) {
        answer.price = 0;
        return answer;
    }
    const Compact compact = compacted(problem);
    if (compact.impossible) {
        answer.standing = Standing::impossible;
        answer.at_least = no_limit;
        return answer;
    }
    answer = Search(compact, patience).run();
    if (answer.standing == Standing::impossible) answer.at_least = no_limit;
    if (!answer.chosen.empty()) {
        const double price = price_of(problem, answer.chosen);
        if (answer.standing == Standing::proved) answer.at_least = price;
        answer.at_least = std::min(answer.at_least, price);
        answer.price = price;
    }
    return answer;
}

bool keeps_limits(const Problem& problem, const std::vector<std::size_t>& chosen) {
    const std::size_t n = problem.branches.size();
    std::vector<std::array<double, most_resources>> sent(n);
    std::vector<bool> reached(n, false);
    std::vector<std::size_t> way;
    for (std::size_t b = 0; b < n; ++b) {
        for (std::size_t at = b; at != from_root && !reached[at];) {
            way.push_back(at);
            at = problem.branches[at].parent;
        }
        for (; !way.empty(); way.pop_back()) {
            const std::size_t at = way.back();
            const std::size_t parent = problem.branches[at].parent;
            const auto& in = parent == from_root ? problem.at_root : sent[parent];
            const Option& option = problem.branches[at].options[chosen[at]];
            for (std::size_t i = 0; i < problem.resources; ++i) {
                const Change& change = option.changes[i];
                const double out = change.amount + (change.sets ? 0 : in[i]);
                if (!within(in[i], change.takes_at_most)) return false;
                if (!within(out, change.leaves_at_most)) return false;
                sent[at][i] = out;
            }
            reached[at] = true;
        }
    }
    return true;
}

double price_of(const Problem& problem, const std::vector<std::size_t>& chosen) {
    double sum = 0;
    for (std::size_t b = 0; b < chosen.size(); ++b) {
        sum += problem.branches[b].options[chosen[b]].price;
    }
    return sum;
}

}  // namespace toft::spread
