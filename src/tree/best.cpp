#include "tree/best.h"

#include "spread/solve.h"
#include "tree/problem.h"
#include "tree/tighten.h"

#include <algorithm>
#include <cmath>

namespace toft::tree {

namespace {

using study::RunScheme;

constexpr std::uint64_t most_offers = 50'000'000;  ///< of the solver, before it gives up
constexpr long most_choices = 20'000;              ///< of all runs together
constexpr std::size_t most_once = 6;  ///< things bought once: every set of them is tried

class Seeker {
public:
    Seeker(const Workplace& at, const Tree& tree, const Asked& asked, Depth depth)
        : at_(at), tree_(tree), asked_(asked), depth_(depth) {
        std::function<bool()> go_on;
        if (asked.go_on) go_on = [this] { return is_to_go_on(0); };
        choices_ = choices_of(at, tree, {asked.floor, asked.own_electrode}, depth, go_on);
    }

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
        if (best_.stopped) return std::move(best_);  // choices are not complete
        best_.at_least = no_limit;
        const std::vector<Items> sets = sets_of(bought_once());
        for (std::size_t i = 0; i < sets.size(); ++i) {
            rest_least_ = no_limit;
            for (std::size_t k = i + 1; k < sets.size(); ++k) {
                rest_least_ = std::min(rest_least_, least_with(sets[k]));
            }
            seek(sets[i]);
        }
        if (best_.found) best_.at_least = std::min(best_.at_least, best_.found->cost);
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

    double price_of(const Items& bought) const {
        const double tax = at_.book.amount(price::Item::vat_percent) / 100;
        double sum = price_once(at_.book, bought) * (1 + tax);
        for (const price::Item item : bought) {
            // Unless its tax is whole pennies the run that buys it may round a penny less.
            const Pounds more = at_.book.one(item) * tax;
            if (std::fabs((more - penny(more)).number()) > penny_part) sum -= 0.01;
        }
        return sum;
    }

    /// No way that buys those once costs less: each run by its cheapest choice.
    double least_with(const Items& bought) const {
        double least = price_of(bought);
        for (const RunChoices& run : choices_) {
            double cheapest = no_limit;
            for (const Choice& c : run.choices) cheapest = std::min(cheapest, c.price);
            least += cheapest;
        }
        return least;
    }

    void seek(const Items& bought) {
        bought_ = bought;
        extra_ = price_of(bought);
        set_least_ = least_with(bought);
        seek_without({});
        if (stopped_ || too_quick_) best_.at_least = std::min(best_.at_least, set_least_);
    }

    /// Of all ways that buy what is bought now, where nothing is banned.
    void raise(const std::vector<Ban>& bans, double at_least) {
        if (bans.empty()) set_least_ = std::max(set_least_, at_least);
    }

    /// The cheapest under those bans, by asking, following through and asking again.
    void seek_without(const std::vector<Ban>& bans) {
        for (;;) {
            if (!may_go_on()) return;
            const Posed asked = posed(tree_, choices_, bans, bought_, depth_);
            spread::Patience patience;
            patience.most_offers = most_offers;
            if (asked_.go_on) {
                patience.go_on = [this, &bans](const spread::Progress& p) {
                    return is_to_go_on(bans.empty() ? p.at_least + extra_ : 0);
                };
            }
            const auto answer = spread::solve(asked.problem, patience);
            if (answer && answer->standing == spread::Standing::stopped) {
                stopped_ = true;
                raise(bans, answer->at_least + extra_);
                if (!best_.found && !answer->chosen.empty()) follow_through(asked, *answer);
                return;
            }
            if (!answer || answer->standing == spread::Standing::impossible) return;
            const double promised = answer->price + extra_;
            if (promised >= price_to_beat() - penny_part) {
                too_dear_ = too_dear_ || !best_.found;
                best_.at_least = std::min(best_.at_least, promised);
                return;
            }
            raise(bans, promised);
            ++best_.rounds;
            if (settle(choices_in(asked, *answer), bans)) return;
        }
    }

    static std::vector<std::size_t> choices_in(const Posed& asked, const spread::Answer& answer) {
        std::vector<std::size_t> chosen;
        for (std::size_t i = 0; i < answer.chosen.size(); ++i) {
            chosen.push_back(asked.choice_of[i][answer.chosen[i]]);
        }
        return chosen;
    }

    std::vector<RunScheme> schemes_of(const std::vector<std::size_t>& chosen) const {
        std::vector<RunScheme> schemes;
        for (std::size_t i = 0; i < chosen.size(); ++i) {
            schemes.push_back(choices_[i].choices[chosen[i]].scheme);
        }
        return schemes;
    }

    /// Something, where the solver was stopped before it had proved anything.
    void follow_through(const Posed& asked, const spread::Answer& answer) {
        Followed followed = follow(at_, tree_, schemes_of(choices_in(asked, answer)), asked_.floor);
        if (followed.sound) take(std::move(followed));
    }

    /// Asks who asked; no is final. `at_least`: of ways that buy what is bought now.
    bool is_to_go_on(double at_least) {
        if (best_.stopped) return false;
        const double price = best_.found ? best_.found->cost : no_limit;
        const double least =
            std::min({best_.at_least, rest_least_, std::max(set_least_, at_least), price});
        const Progress progress{best_.rounds, price, least, asked_.floor};
        best_.stopped = !asked_.go_on(progress);
        stopped_ = stopped_ || best_.stopped;
        return !best_.stopped;
    }

    bool may_go_on() {
        if (stopped_ || too_quick_) return false;
        if (best_.rounds >= asked_.most_rounds) {
            stopped_ = true;
            return false;
        }
        return !asked_.go_on || is_to_go_on(0);
    }

    /// Follows a proposal through. True when nothing is left to ask under these bans; else some
    /// choice has become stricter.
    bool settle(const std::vector<std::size_t>& chosen, const std::vector<Ban>& bans) {
        const std::vector<RunScheme> schemes = schemes_of(chosen);
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
        return best_.found ? std::min(best_.found->cost, asked_.below) : asked_.below;
    }

    void take(Followed&& followed) {
        if (followed.cost >= price_to_beat() - penny_part) return;
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
    double set_least_ = 0;   ///< no way costs less that buys what is bought now
    double rest_least_ = 0;  ///< … that buys what is yet to be tried
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
    if (best.stopped || !asked.thorough) return best;
    Seeker full(at, tree, asked, Depth::full);
    if (full.choices() > most_choices) return best;
    Best sure = full.seek();
    best.stopped = sure.stopped;
    sure.at_least = std::max(sure.at_least, best.at_least);
    return sure.found || !best.found ? sure : best;
}

}  // namespace toft::tree
