#include "spread/pass.h"

#include "spread/offers.h"

#include <algorithm>

namespace toft::spread {

namespace {

constexpr std::uint64_t ask_after = 1000;  ///< offers between two questions whether to go on
constexpr std::uint32_t small = 12;        ///< branches of a part that is always worked out in full

template <std::size_t K>
using Offers = std::vector<Offer<K>>;

/// Figures of a part: what may arrive, what it costs to send more, and the bound so far.
template <std::size_t K>
struct Part {
    std::array<double, K> low{};
    std::array<double, K> high{};
    std::array<double, K> slope{};
    double least = 0;  ///< of price − slope · most over its offers
    Offers<K> offers;

    double value(const Offer<K>& offer) const {
        double value = offer.price;
        for (std::size_t i = 0; i < K; ++i) value -= slope[i] * std::min(offer.most[i], high[i]);
        return value;
    }
};

template <std::size_t K>
class Pass {
public:
    Pass(const Compact& compact, const std::vector<Stage>& plan, const Slopes& slopes,
         const PassOrder& order)
        : compact_(compact), plan_(plan), slopes_(slopes), order_(order), parts_(plan.size()) {
        least_ = slopes.least;
        passed_.least = least_;
        nothing_behind_.resize(1);
        nothing_behind_[0].most.fill(no_limit);
    }

    Passed run() {
        for (std::uint32_t s = 0; s < plan_.size(); ++s) {
            if (plan_[s].covers <= small) passed_.least = least_;
            set_figures(s);
            const double before = plan_[s].twig == none ? join(s) : grow(s);
            finish(s, before);
            if (stopped(0)) return passed_;
            if (parts_[s].offers.empty()) return passed_;
        }
        read_best();
        return passed_;
    }

private:
    /// Asks the caller if at least so many offers were made since the last question.
    bool stopped(std::uint64_t since) {
        if (!passed_.stopped && order_.go_on && passed_.offers >= asked_ + since) {
            asked_ = passed_.offers;
            passed_.stopped = !order_.go_on(asked_);
        }
        return passed_.stopped;
    }

    /// By how much the bound may be exceeded before an offer is of no use.
    double room() const { return order_.price + order_.guard - least_; }

    void set_figures(std::uint32_t s) {
        const Stage& stage = plan_[s];
        Part<K>& part = parts_[s];
        const Twig& twig = compact_.twigs[some_twig(stage)];
        for (std::size_t i = 0; i < compact_.resources; ++i) {
            part.low[i] = twig.low[i];
            part.high[i] = twig.high[i];
            part.slope[i] = stage.twig != none
                                ? slopes_.arriving[stage.twig][i]
                                : parts_[stage.left].slope[i] + parts_[stage.right].slope[i];
        }
    }

    std::uint32_t some_twig(const Stage& stage) const {
        return stage.twig != none ? stage.twig : compact_.fed_from(stage.node).front();
    }

    /// Takes an offer in unless it cannot be met, or nothing good enough can come of it.
    void consider(Part<K>& part, Offer<K> offer, double before) {
        ++passed_.offers;
        for (std::size_t i = 0; i < K; ++i) {
            if (offer.most[i] < part.low[i]) return;
            if (offer.most[i] >= part.high[i]) offer.most[i] = no_limit;
        }
        if (part.value(offer) - before <= room()) part.offers.push_back(offer);
    }

    double grow(std::uint32_t s) {
        const Stage& stage = plan_[s];
        const Twig& twig = compact_.twigs[stage.twig];
        Part<K>& part = parts_[s];
        const Offers<K>& below = stage.left == none ? nothing_behind_ : parts_[stage.left].offers;
        const double before =
            slopes_.own[stage.twig] + (stage.left == none ? 0 : parts_[stage.left].least);
        for (std::uint32_t c = 0; c < twig.choices.size(); ++c) {
            for (std::uint32_t from = 0; from < below.size() && !stopped(ask_after); ++from) {
                consider(part, grown(twig.choices[c], below[from], from, c), before);
            }
        }
        return before;
    }

    Offer<K> grown(const Choice& choice, const Offer<K>& below, std::uint32_t from,
                   std::uint32_t pick) const {
        Offer<K> offer{choice.price + below.price, {}, from, pick};
        offer.most.fill(no_limit);
        for (std::size_t i = 0; i < compact_.resources; ++i) {
            const double back = !choice.sets[i] ? below.most[i] - choice.amount[i]
                                : choice.amount[i] <= below.most[i] ? no_limit
                                                                    : -no_limit;
            offer.most[i] = std::min(choice.up[i], back);
        }
        return offer;
    }

    /// For each of `a` the first of `b` that bears all it does; behind that one nothing of `b` is
    /// of use to it.
    static std::vector<std::uint32_t> first_that_bear(const Offers<K>& a, const Offers<K>& b) {
        std::vector<std::uint32_t> first;
        first.reserve(a.size());
        for (const Offer<K>& offer : a) {
            const auto at = std::find_if(
                b.begin(), b.end(), [&](const Offer<K>& other) { return bears(other, offer); });
            first.push_back(static_cast<std::uint32_t>(at - b.begin()));
        }
        return first;
    }

    double join(std::uint32_t s) {
        const Part<K>& left = parts_[plan_[s].left];
        const Part<K>& right = parts_[plan_[s].right];
        Part<K>& part = parts_[s];
        const double before = left.least + right.least;
        const auto useful_right = first_that_bear(left.offers, right.offers);
        const auto useful_left = first_that_bear(right.offers, left.offers);
        std::vector<double> over;
        for (const Offer<K>& b : right.offers) over.push_back(right.value(b) - right.least);
        std::size_t thinned = 0;
        for (std::uint32_t i = 0; i < left.offers.size() && !stopped(ask_after); ++i) {
            const Offer<K>& a = left.offers[i];
            const double room_left = room() - (left.value(a) - left.least);
            const auto end = std::min<std::size_t>(useful_right[i] + 1, right.offers.size());
            for (std::uint32_t j = 0; j < end; ++j) {
                if (i > useful_left[j] || over[j] > room_left) continue;
                const Offer<K>& b = right.offers[j];
                Offer<K> both{a.price + b.price, a.most, i, j};
                for (std::size_t r = 0; r < K; ++r) both.most[r] = std::min(a.most[r], b.most[r]);
                consider(part, both, before);
            }
            if (part.offers.size() > 2 * thinned + 50000) {
                thin_part(s);
                thinned = part.offers.size();
            }
        }
        return before;
    }

    void thin_part(std::uint32_t s) {
        thin<K>(parts_[s].offers,
                [&](const Offer<K>& a, const Offer<K>& b) { return order(s, a, b) < 0; });
    }

    /// Below 0 when `a` comes before `b` in the order of the answer.
    int order(std::uint32_t s, Offer<K> a, Offer<K> b) const {
        while (true) {
            const Stage& stage = plan_[s];
            if (stage.twig != none) {
                if (a.pick != b.pick) return a.pick < b.pick ? -1 : 1;
                if (a.from == b.from) return 0;
                s = stage.left;
                const Offers<K>& below = parts_[s].offers;
                const std::uint32_t to = b.from;
                a = below[a.from];
                b = below[to];
                continue;
            }
            if (a.from != b.from) {
                const Offers<K>& left = parts_[stage.left].offers;
                const int first = order(stage.left, left[a.from], left[b.from]);
                if (first != 0) return first;
            }
            if (a.pick == b.pick) return 0;
            s = stage.right;
            const Offers<K>& right = parts_[s].offers;
            a = right[a.pick];
            b = right[b.pick];
        }
    }

    void finish(std::uint32_t s, double before) {
        Part<K>& part = parts_[s];
        thin_part(s);
        if (part.offers.size() > order_.cap) cut(s, before);
        double least = no_limit;
        for (const Offer<K>& offer : part.offers) least = std::min(least, part.value(offer));
        part.least = std::max(least, before);
        if (!part.offers.empty()) least_ += part.least - before;
    }

    /// Keeps the offers of which the cheapest solutions may come, and those that bear most.
    void cut(std::uint32_t s, double before) {
        Part<K>& part = parts_[s];
        std::vector<std::pair<double, std::uint32_t>> by_value;
        std::array<std::uint32_t, K> bearer{};
        for (std::uint32_t n = 0; n < part.offers.size(); ++n) {
            by_value.push_back({part.value(part.offers[n]), n});
            for (std::size_t i = 0; i < K; ++i) {
                if (part.offers[n].most[i] > part.offers[bearer[i]].most[i]) bearer[i] = n;
            }
        }
        const auto end = by_value.begin() + static_cast<std::ptrdiff_t>(order_.cap);
        std::nth_element(by_value.begin(), end, by_value.end());
        const double bound = least_ + end->first - before;
        passed_.cut = std::min(passed_.cut, order_.price < no_limit ? bound : -no_limit);
        std::vector<std::uint32_t> kept;
        for (auto it = by_value.begin(); it != end; ++it) kept.push_back(it->second);
        kept.insert(kept.end(), bearer.begin(), bearer.end());
        kept.push_back(static_cast<std::uint32_t>(part.offers.size() - 1));
        std::sort(kept.begin(), kept.end());
        kept.erase(std::unique(kept.begin(), kept.end()), kept.end());
        Offers<K> left;
        for (const std::uint32_t n : kept) left.push_back(part.offers[n]);
        part.offers = std::move(left);
    }

    void read_best() {
        passed_.best.picks.assign(compact_.twigs.size(), 0);
        passed_.best.price = compact_.settled_price + parts_.back().offers.front().price;
        std::vector<std::pair<std::uint32_t, std::uint32_t>> open{
            {static_cast<std::uint32_t>(plan_.size() - 1), 0}};
        while (!open.empty()) {
            const auto [s, n] = open.back();
            open.pop_back();
            const Stage& stage = plan_[s];
            const Offer<K>& offer = parts_[s].offers[n];
            if (stage.twig != none) {
                passed_.best.picks[stage.twig] = offer.pick;
                if (stage.left != none) open.push_back({stage.left, offer.from});
            } else {
                open.push_back({stage.left, offer.from});
                open.push_back({stage.right, offer.pick});
            }
        }
    }

    const Compact& compact_;
    const std::vector<Stage>& plan_;
    const Slopes& slopes_;
    const PassOrder& order_;
    std::vector<Part<K>> parts_;
    Offers<K> nothing_behind_;
    double least_ = 0;  ///< no solution that is looked for and was not cut costs less
    std::uint64_t asked_ = 0;
    Passed passed_;
};

}  // namespace

Passed pass(const Compact& compact, const std::vector<Stage>& plan, const Slopes& slopes,
            const PassOrder& order) {
    if (compact.resources <= 1) return Pass<1>(compact, plan, slopes, order).run();
    if (compact.resources == 2) return Pass<2>(compact, plan, slopes, order).run();
    if (compact.resources <= 4) return Pass<4>(compact, plan, slopes, order).run();
    return Pass<most_resources>(compact, plan, slopes, order).run();
}

}  // namespace toft::spread
