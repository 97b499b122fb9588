#include "tree/best.h"

#include "spread/solve.h"
#include "tree/problem.h"
#include "tree/tighten.h"

#include <algorithm>

namespace toft::tree {

namespace {

using study::RunScheme;

constexpr std::uint64_t most_offers = 50'000'000;  ///< of the solver, before it gives up
constexpr long most_choices = 20'000;              ///< of all runs together
constexpr std::size_t most_once = 6;  ///< things bought once: every set of them is tried

class Seeker {
public:
    Seeker(const Workplace& at, const Tree& tree, const Asked& asked, Depth depth)
        : at_(at),
          tree_(tree),
          asked_(asked),
          depth_(depth),
          choices_(choices_of(at, tree, asked.floor, depth)) {}

    long choices() const {
        long count = 0;
        for (const RunChoices& run : choices_) count += static_cast<long>(run.choices.size());
        return count;
    }

    /// Quickly made choices did not stand.
    bool too_quick() const { return too_quick_; }

    /// There are ways that might be built, but none below the price asked for.
    bool all_too_dear() const { return too_dear_ && !best_.found && !stopped_ && !too_quick_; }

    Best seek() {
        for (const RunChoices& run : choices_) {
            best_.considered += run.considered;
            best_.choices += static_cast<long>(run.choices.size());
        }
        best_.at_least = no_limit;
        for (const auto& bought : sets_of(bought_once())) seek(bought);
        if (best_.found) best_.at_least = std::min(best_.at_least, best_.found->total);
        best_.proved = !stopped_ && !too_quick_;
        return std::move(best_);
    }

private:
    using Items = std::vector<price::Item>;

    /// Everything that some choice asks to be bought once.
    Items bought_once() const {
        Items all;
        for (const RunChoices& run : choices_) {
            for (const Choice& c : run.choices) {
                for (const price::Item item : c.once) {
                    if (std::find(all.begin(), all.end(), item) == all.end()) all.push_back(item);
                }
            }
        }
        return all;
    }

    /// All sets of them, the empty one first; beyond `most_once` the rest is in every set.
    static std::vector<Items> sets_of(const Items& all) {
        const std::size_t free = std::min(all.size(), most_once);
        std::vector<Items> sets;
        for (std::size_t bits = 0; bits < (std::size_t{1} << free); ++bits) {
            Items set(all.begin() + static_cast<std::ptrdiff_t>(free), all.end());
            for (std::size_t i = 0; i < free; ++i) {
                if (bits >> i & 1) set.push_back(all[i]);
            }
            sets.push_back(std::move(set));
        }
        return sets;
    }

    void seek(const Items& bought) {
        bought_ = bought;
        const double tax = 1 + at_.book.amount(price::Item::vat_percent) / 100;
        extra_ = price_once(at_.book, bought) * tax;
        seek_without({});
    }

    /// The cheapest under those bans, by asking, following through and asking again.
    void seek_without(const std::vector<Ban>& bans) {
        for (;;) {
            if (!may_go_on()) return;
            const Posed asked = posed(tree_, choices_, bans, bought_, depth_);
            spread::Patience patience;
            patience.most_offers = most_offers;
            const auto answer = spread::solve(asked.problem, patience);
            if (answer && answer->standing == spread::Standing::stopped) {
                stopped_ = true;
                best_.at_least = std::min(best_.at_least, answer->at_least + extra_);
                return;
            }
            if (!answer || answer->standing == spread::Standing::impossible) return;
            const double promised = answer->price + extra_;
            if (promised >= price_to_beat() - penny_part) {
                too_dear_ = too_dear_ || !best_.found;
                best_.at_least = std::min(best_.at_least, promised);
                return;
            }
            at_least_ = promised;
            ++best_.rounds;
            std::vector<std::size_t> chosen;
            for (std::size_t i = 0; i < answer->chosen.size(); ++i) {
                chosen.push_back(asked.choice_of[i][answer->chosen[i]]);
            }
            if (settle(chosen, bans)) return;
        }
    }

    bool may_go_on() {
        if (stopped_ || too_quick_) return false;
        if (best_.rounds >= asked_.most_rounds) {
            stopped_ = true;
            best_.at_least = std::min(best_.at_least, at_least_);
            return false;
        }
        if (!asked_.go_on) return true;
        const Progress progress{best_.rounds, best_.found ? best_.found->total : no_limit,
                                at_least_};
        stopped_ = !asked_.go_on(progress);
        if (stopped_) best_.at_least = std::min(best_.at_least, at_least_);
        return !stopped_;
    }

    /// Follows a proposal through. True when nothing is left to ask under these bans; else some
    /// choice has become stricter.
    bool settle(const std::vector<std::size_t>& chosen, const std::vector<Ban>& bans) {
        std::vector<RunScheme> schemes;
        for (std::size_t i = 0; i < chosen.size(); ++i) {
            schemes.push_back(choices_[i].choices[chosen[i]].scheme);
        }
        Followed followed = follow(at_, tree_, schemes, asked_.floor);
        bool stricter = false;
        std::size_t joint = chosen.size();
        for (std::size_t i = 0; i < chosen.size(); ++i) {
            const FollowedRun& run = followed.runs[i];
            const double promised = choices_[i].choices[chosen[i]].price;
            if (run.judged.sound && run.alone <= promised + penny_part) continue;
            const Asking asking{tree_.order[i].run, asked_.floor, depth_};
            if (run.behind && tighten(at_, asking, choices_[i], chosen[i], run.incoming)) {
                stricter = true;
            } else if (joint == chosen.size()) {
                joint = i;
            }
        }
        if (followed.sound) take(std::move(followed));
        if (stricter) return false;
        if (joint < chosen.size() && depth_ == Depth::quick) {
            too_quick_ = true;
            best_.at_least = std::min(best_.at_least, at_least_);
            return true;
        }
        if (joint < chosen.size()) {
            without_this_way(joint, chosen, bans);
        } else if (!best_.found || !ways_free(schemes)) {
            with_fewer_ways(schemes, bans);
        }
        return true;
    }

    double price_to_beat() const {
        return best_.found ? std::min(best_.found->total, asked_.below) : asked_.below;
    }

    void take(Followed&& followed) {
        if (followed.total >= price_to_beat() - penny_part) return;
        best_.found = std::move(followed);
    }

    /// Only several figures together are to blame: one of the choices on the way must be another.
    void without_this_way(std::size_t place, const std::vector<std::size_t>& chosen,
                          const std::vector<Ban>& bans) {
        std::vector<std::size_t> way = way_to(tree_.order, place);
        way.push_back(place);
        for (const std::size_t on_the_way : way) {
            std::vector<Ban> more = bans;
            more.push_back({on_the_way, chosen[on_the_way]});
            seek_without(more);
        }
    }

    bool ways_free(const std::vector<RunScheme>& schemes) const {
        return follow(at_, tree_, schemes, asked_.floor).ways_free;
    }

    /// Some run that takes a way must be fed from elsewhere.
    void with_fewer_ways(const std::vector<RunScheme>& schemes, const std::vector<Ban>& bans) {
        for (std::size_t i = 0; i < schemes.size(); ++i) {
            if (schemes[i].fed_from != site::FedFrom::spare_way) continue;
            std::vector<Ban> more = bans;
            more.push_back({i, std::nullopt});
            seek_without(more);
        }
    }

    const Workplace& at_;
    const Tree& tree_;
    const Asked& asked_;
    Depth depth_;
    bool too_quick_ = false;
    bool too_dear_ = false;
    std::vector<RunChoices> choices_;
    Items bought_;
    double extra_ = 0;
    double at_least_ = 0;
    bool stopped_ = false;
    Best best_;
};

}  // namespace

Best cheapest(const Workplace& at, const Tree& tree, const Asked& asked) {
    Seeker quick(at, tree, asked, Depth::quick);
    Best best = quick.seek();
    // That quick choices find nothing proves nothing.
    if ((best.found && !quick.too_quick()) || quick.all_too_dear()) return best;
    best.proved = false;
    if (!asked.thorough) return best;
    Seeker full(at, tree, asked, Depth::full);
    if (full.choices() > most_choices) return best;
    Best sure = full.seek();
    return sure.found || !best.found ? sure : best;
}

}  // namespace toft::tree
