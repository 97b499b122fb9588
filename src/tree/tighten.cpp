#include "tree/tighten.h"

#include <algorithm>

namespace toft::tree {

namespace {

using study::Incoming;

/// What a choice costs, fed with what.
class Cost {
public:
    Cost(const Workplace& at, std::size_t run, const Floor& floor, const Choice& choice)
        : at_(at), run_(run), floor_(floor), choice_(choice) {}

    double operator()(const Incoming& in) const {
        RunJudge judge(at_, run_, choice_.scheme.phases, &in);
        const Judged judged = judge.judge(choice_.scheme, floor_);
        return judged.sound ? judged.cost : no_limit;
    }

private:
    const Workplace& at_;
    std::size_t run_;
    Floor floor_;
    const Choice& choice_;
};

/// Most of the way from the best to what arrives at which the choice keeps its price, and what it
/// costs just beyond.
struct Turn {
    double share = 0;
    double beyond = no_limit;
};

Turn turning(const Cost& cost, const Choice& choice, const Incoming& best, const Incoming& arriving,
             Axis axis) {
    double low = 0;
    double high = 1;
    double beyond = cost(moved(best, arriving, axis, 1));
    while (high - low > 1e-12) {
        const double middle = (low + high) / 2;
        const double there = cost(moved(best, arriving, axis, middle));
        if (there <= choice.price + penny_part) {
            low = middle;
        } else {
            high = middle;
            beyond = there;
        }
    }
    return {low, beyond};
}

}  // namespace

bool tighten(const Workplace& at, const Asking& asking, RunChoices& run, std::size_t choice,
             const Incoming& arriving) {
    const Choice original = run.choices[choice];
    Incoming best = run.arriving[static_cast<std::size_t>(original.earth)]->best;
    best.device = arriving.device;
    best.residual = arriving.residual;
    best.phases = arriving.phases;
    const Cost cost(at, asking.run, asking.floor, original);
    // Not to blame on any figure: what stands before is too small, or the like.
    if (cost(best) > original.price + penny_part) return false;
    double beyond = no_limit;
    bool blamed = false;
    for (std::size_t i = 0; i < axes; ++i) {
        const auto axis = static_cast<Axis>(i);
        if (asking.depth == Depth::quick && of_levels(axis)) continue;
        if (cost(moved(best, arriving, axis, 1)) <= original.price + penny_part) continue;
        const Turn turn = turning(cost, original, best, arriving, axis);
        const double limit = figures_of(moved(best, arriving, axis, turn.share))[i];
        run.choices[choice].takes[i] = std::min(original.takes[i], limit);
        beyond = std::min(beyond, turn.beyond);
        blamed = true;
    }
    if (!blamed || beyond == no_limit) return blamed;
    Choice dearer = original;
    dearer.price = beyond;
    run.choices.push_back(std::move(dearer));
    return true;
}

}  // namespace toft::tree
