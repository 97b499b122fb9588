#include "price/price.h"

#include "price/pricer.h"

namespace toft::price {

namespace {

template <class L>
void add_up_in(L& ledger, const ValueIn<L, double>& vat_percent, Price<L>& p) {
    p.net = ledger.let(
        {"P.net", "price without tax"},
        without_dust(p.house_end + p.run + p.ground + p.far_end + p.test_and_paper + p.remedies));
    p.vat = ledger.let({"P.vat", "tax"}, penny(p.net * (vat_percent / 100.0)));
    p.total = ledger.let({"P", "price with tax"}, without_dust(p.net + p.vat));
}

}  // namespace

void add_up(Price<Silent>& price, const Book& book) {
    Silent silent;
    price.remedies = without_dust(price.remedies);
    add_up_in(silent, book.amount(Item::vat_percent), price);
}

template <class L>
Price<L> price_of(L& ledger, const Book& book, const study::Setting<Silent>& setting,
                  const study::RunScheme& scheme, const Extras& extras) {
    NoSink silent;
    Pricer<L, NoSink> pricer(ledger, book, setting, scheme, silent);
    Price<L> p;
    p.house_end = pricer.house_end();
    p.run = pricer.run();
    p.ground = pricer.ground();
    p.far_end = pricer.far_end(extras.circuits);
    p.test_and_paper = pricer.test_and_paper();
    p.remedies = pricer.remedies(extras.remedies);
    add_up_in(ledger, pricer.vat_share(), p);
    return p;
}

template Price<Silent> price_of(Silent&, const Book&, const study::Setting<Silent>&,
                                const study::RunScheme&, const Extras&);
template Price<Recording> price_of(Recording&, const Book&, const study::Setting<Silent>&,
                                   const study::RunScheme&, const Extras&);

}  // namespace toft::price
