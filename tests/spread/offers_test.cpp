#include "spread/offers.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::spread {
namespace {

template <std::size_t K>
std::vector<Offer<K>> any_offers() {
    std::vector<Offer<K>> offers(static_cast<std::size_t>(*rc::gen::inRange(0, 80)));
    for (std::uint32_t n = 0; n < offers.size(); ++n) {
        offers[n].price = *rc::gen::inRange(0, 12);
        offers[n].pick = n;
        for (double& most : offers[n].most) {
            const int drawn = *rc::gen::inRange(0, 8);
            most = drawn == 7 ? no_limit : drawn;
        }
    }
    return offers;
}

template <std::size_t K>
bool comes_first(const Offer<K>& a, const Offer<K>& b) {
    return a.price != b.price ? a.price < b.price : a.pick < b.pick;
}

template <std::size_t K>
void expect_like_plain_scan() {
    const auto all = any_offers<K>();
    std::vector<Offer<K>> plain;
    for (const Offer<K>& one : all) {
        const bool beaten = std::any_of(all.begin(), all.end(), [&](const Offer<K>& other) {
            return comes_first(other, one) && bears(other, one);
        });
        if (!beaten) plain.push_back(one);
    }
    std::sort(plain.begin(), plain.end(), comes_first<K>);
    auto thinned = all;
    thin<K>(thinned, [](const Offer<K>& a, const Offer<K>& b) { return a.pick < b.pick; });
    RC_ASSERT(thinned.size() == plain.size());
    for (std::size_t n = 0; n < plain.size(); ++n) RC_ASSERT(thinned[n].pick == plain[n].pick);
}

RC_GTEST_PROP(Offers, ThinnedByOneResource, ()) { expect_like_plain_scan<1>(); }
RC_GTEST_PROP(Offers, ThinnedByTwo, ()) { expect_like_plain_scan<2>(); }
RC_GTEST_PROP(Offers, ThinnedByFour, ()) { expect_like_plain_scan<4>(); }
RC_GTEST_PROP(Offers, ThinnedByEight, ()) { expect_like_plain_scan<8>(); }

}  // namespace
}  // namespace toft::spread
