#include "search/sieve.h"

#include <limits>

namespace toft::search {

namespace {

constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

}  // namespace

Sieve::Sieve(const HeadList& heads, const price::Book& book)
    : with_tax_(1 + book.amount(price::Item::vat_percent) / 100) {
    for (const JudgedHead* head : heads.live()) {
        const PartFinding& f = head->finding;
        const auto at = std::find(headrooms_.begin(), headrooms_.end(), f.headroom);
        const auto group = static_cast<std::size_t>(at - headrooms_.begin());
        if (at == headrooms_.end()) headrooms_.push_back(f.headroom);
        rows_.push_back({(f.price.house_end + f.price.remedies).number(), group});
    }
    forget();
}

void Sieve::take_up(const PartFinding& route) {
    const price::Price<Silent>& p = route.price;
    net_ = (p.run + p.ground + p.far_end + p.test_and_paper + p.remedies).number();
    headroom_ = route.headroom;
    forget();
}

void Sieve::forget() { ceilings_.assign(headrooms_.size(), unknown); }

}  // namespace toft::search
