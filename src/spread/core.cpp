#include "spread/core.h"

#include <algorithm>

namespace toft::spread {

namespace {

class Folding {
public:
    Folding(const Compact& compact, const Slopes& slopes, double room) : compact_(compact) {
        compact_.settled = compact.settled;
        arriving_ = slopes.arriving;
        for (std::uint32_t t = 0; t < compact_.twigs.size(); ++t) {
            auto& choices = compact_.twigs[t].choices;
            const auto too_dear = [&](const Choice& choice) {
                return own_of(compact, slopes, t, choice) - slopes.own[t] > room;
            };
            choices.erase(std::remove_if(choices.begin(), choices.end(), too_dear), choices.end());
            compact_.impossible = compact_.impossible || choices.empty();
        }
        gone_.resize(compact_.twigs.size(), false);
    }

    Core core(const Slopes& slopes) {
        for (auto t = static_cast<std::uint32_t>(compact_.twigs.size()); t-- > 0;) {
            if (!compact_.impossible && !gone_[t] && compact_.twigs[t].parent != none &&
                compact_.twigs[t].children.empty() && compact_.twigs[t].choices.size() == 1) {
                fold_end(t);
            }
        }
        for (std::uint32_t t = 0; t < compact_.twigs.size() && !compact_.impossible; ++t) {
            const Twig& twig = compact_.twigs[t];
            if (!gone_[t] && twig.choices.size() == 1 && !twig.children.empty()) {
                splice(t, slopes);
            }
        }
        return gathered();
    }

private:
    void settle_twig(std::uint32_t t) {
        const Twig& twig = compact_.twigs[t];
        compact_.settled.push_back({twig.branch, twig.choices.front().option});
        gone_[t] = true;
    }

    /// An end with one choice: what feeds it must leave no more than it takes, and pays for it.
    void fold_end(std::uint32_t t) {
        const Choice end = compact_.twigs[t].choices.front();
        Twig& parent = compact_.twigs[compact_.twigs[t].parent];
        std::vector<Choice> left;
        for (Choice choice : parent.choices) {
            choice.price += end.price;
            if (limit_leaving(choice, end.up)) left.push_back(choice);
        }
        parent.choices = std::move(left);
        compact_.impossible = compact_.impossible || parent.choices.empty();
        auto& children = parent.children;
        children.erase(std::find(children.begin(), children.end(), t));
        for (std::size_t i = 0; i < compact_.resources; ++i) parent.limits[i] = true;
        settle_twig(t);
    }

    /// False when the choice always leaves more than `up`.
    bool limit_leaving(Choice& choice, const Figures& up) const {
        for (std::size_t i = 0; i < compact_.resources; ++i) {
            if (choice.sets[i] && choice.amount[i] > up[i]) return false;
            if (!choice.sets[i]) choice.up[i] = std::min(choice.up[i], up[i] - choice.amount[i]);
        }
        return true;
    }

    /// A branch with one choice in the middle: what it feeds hangs on what feeds it.
    void splice(std::uint32_t t, const Slopes& slopes) {
        const Twig twig = compact_.twigs[t];
        const Choice& only = twig.choices.front();
        for (const std::uint32_t c : twig.children) put_before(only, twig, c);
        Twig& first = compact_.twigs[twig.children.front()];
        for (Choice& choice : first.choices) {
            choice.price += only.price;
            for (std::size_t i = 0; i < compact_.resources; ++i) {
                choice.up[i] = std::min(choice.up[i], only.up[i]);
            }
        }
        for (std::size_t i = 0; i < compact_.resources; ++i) {
            double& p = arriving_[twig.children.front()][i];
            const double passed_on = only.sets[i] ? 0 : slopes.leaving[t][i];
            p = std::max(0.0, p + slopes.arriving[t][i] - passed_on);
        }
        auto& siblings =
            twig.parent == none ? compact_.roots : compact_.twigs[twig.parent].children;
        const auto at = siblings.erase(std::find(siblings.begin(), siblings.end(), t));
        siblings.insert(at, twig.children.begin(), twig.children.end());
        settle_twig(t);
    }

    void put_before(const Choice& only, const Twig& twig, std::uint32_t c) {
        Twig& child = compact_.twigs[c];
        child.parent = twig.parent;
        child.low = twig.low;
        child.high = twig.high;
        std::vector<Choice> left;
        for (Choice choice : child.choices) {
            bool works = true;
            for (std::size_t i = 0; i < compact_.resources; ++i) {
                if (only.sets[i]) works = works && only.amount[i] <= choice.up[i];
                choice.up[i] = only.sets[i] ? no_limit : choice.up[i] - only.amount[i];
                if (!choice.sets[i]) choice.amount[i] += only.amount[i];
                choice.sets[i] = choice.sets[i] || only.sets[i];
            }
            if (works) left.push_back(choice);
        }
        child.choices = std::move(left);
        compact_.impossible = compact_.impossible || child.choices.empty();
        for (std::size_t i = 0; i < compact_.resources; ++i) {
            if (only.sets[i]) arriving_[c][i] = 0;
        }
    }

    /// What is left, numbered anew in reading order.
    Core gathered() {
        Core core;
        core.compact.resources = compact_.resources;
        core.compact.at_root = compact_.at_root;
        core.compact.impossible = compact_.impossible;
        core.compact.settled = std::move(compact_.settled);
        core.compact.settled_price = compact_.settled_price;
        if (core.compact.impossible) return core;
        std::vector<std::uint32_t> place(compact_.twigs.size(), none);
        for (std::uint32_t t = 0; t < compact_.twigs.size(); ++t) {
            if (gone_[t]) continue;
            place[t] = static_cast<std::uint32_t>(core.compact.twigs.size());
            Twig twig = std::move(compact_.twigs[t]);
            twig.children.clear();
            if (twig.parent != none) twig.parent = place[twig.parent];
            auto& siblings =
                twig.parent == none ? core.compact.roots : core.compact.twigs[twig.parent].children;
            siblings.push_back(place[t]);
            core.compact.twigs.push_back(std::move(twig));
            core.slopes.arriving.push_back(arriving_[t]);
        }
        narrow(core.compact);
        if (!core.compact.impossible) evaluate(core.compact, core.slopes);
        return core;
    }

    Compact compact_;
    std::vector<Figures> arriving_;
    std::vector<bool> gone_;
};

}  // namespace

Core core_of(const Compact& compact, const Slopes& slopes, double room) {
    return Folding(compact, slopes, room).core(slopes);
}

}  // namespace toft::spread
