#pragma once
// Offers for a part of the tree: all of it can be built for `price`, if what arrives is at most
// `most` in each of K resources. Of two offers one beats the other if it comes first (by price, at
// equal price by the order of the answer) and bears at least as much.

#include "spread/problem.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>
#include <vector>

namespace toft::spread {

template <std::size_t K>
struct Offer {
    double price = 0;
    std::array<double, K> most{};
    std::uint32_t from = 0;  ///< offer behind the branch, or of the first part joined
    std::uint32_t pick = 0;  ///< choice of the branch, or offer of the second part
};

template <std::size_t K>
bool bears(const Offer<K>& a, const Offer<K>& b) {
    for (std::size_t i = 0; i < K; ++i) {
        if (a.most[i] < b.most[i]) return false;
    }
    return true;
}

/// Those seen so far that bear most; asked whether one of them bears a newcomer. A tree that halves
/// by one resource after the other; each knot knows the most of each resource below it.
template <std::size_t K>
class Crest {
public:
    /// False if one seen before bears as much; otherwise takes it in.
    bool take(const Offer<K>& offer) {
        if (!knots_.empty() && borne(offer)) return false;
        const auto place = static_cast<std::uint32_t>(knots_.size());
        std::size_t by = 0;
        for (std::uint32_t at = 0; at < place; by = (by + 1) % K) {
            Knot& knot = knots_[at];
            for (std::size_t i = 0; i < K; ++i) {
                knot.top.most[i] = std::max(knot.top.most[i], offer.most[i]);
            }
            std::uint32_t& next = offer.most[by] < knot.own.most[by] ? knot.less : knot.more;
            at = next == nowhere ? next = place : next;
        }
        knots_.push_back({offer, offer, nowhere, nowhere});
        return true;
    }

private:
    static constexpr std::uint32_t nowhere = static_cast<std::uint32_t>(-1);
    struct Knot {
        Offer<K> own;
        Offer<K> top;
        std::uint32_t less;
        std::uint32_t more;
    };

    bool borne(const Offer<K>& offer) {
        open_.push_back({0, 0});
        while (!open_.empty()) {
            auto [at, by] = open_.back();
            open_.pop_back();
            for (; at != nowhere && bears(knots_[at].top, offer); by = (by + 1) % K) {
                const Knot& knot = knots_[at];
                if (bears(knot.own, offer)) {
                    open_.clear();
                    return true;
                }
                if (offer.most[by] < knot.own.most[by]) {
                    open_.push_back({knot.less, (by + 1) % K});
                }
                at = knot.more;
            }
        }
        return false;
    }

    std::vector<std::pair<std::uint32_t, std::size_t>> open_;
    std::vector<Knot> knots_;
};

template <>
class Crest<1> {
public:
    bool take(const Offer<1>& offer) {
        if (offer.most[0] <= most_) return false;
        most_ = offer.most[0];
        return true;
    }

private:
    double most_ = -no_limit;
};

/// A staircase: the first resource rises, the second falls.
template <>
class Crest<2> {
public:
    bool take(const Offer<2>& offer) {
        const auto [x, y] = offer.most;
        const auto at = std::lower_bound(stairs_.begin(), stairs_.end(), x,
                                         [](const Stair& s, double limit) { return s.x < limit; });
        if (at != stairs_.end() && at->y >= y) return false;
        auto first = at;
        while (first != stairs_.begin() && std::prev(first)->y <= y) --first;
        const auto last = at != stairs_.end() && at->x == x ? std::next(at) : at;
        if (first == last) {
            stairs_.insert(at, {x, y});
        } else {
            *first = {x, y};
            stairs_.erase(std::next(first), last);
        }
        return true;
    }

private:
    struct Stair {
        double x;
        double y;
    };
    std::vector<Stair> stairs_;
};

/// Sorts by price, then by `before`, and strikes offers that are beaten.
template <std::size_t K, class Before>
void thin(std::vector<Offer<K>>& offers, const Before& before) {
    std::sort(offers.begin(), offers.end(), [&](const Offer<K>& a, const Offer<K>& b) {
        return a.price < b.price || (a.price == b.price && before(a, b));
    });
    Crest<K> crest;
    std::size_t kept = 0;
    for (const Offer<K>& offer : offers) {
        if (crest.take(offer)) offers[kept++] = offer;
    }
    offers.resize(kept);
}

}  // namespace toft::spread
