#include "request/bench.h"

#include "price/offer.h"

namespace toft::request {

Outcome<Stock> Bench::stock_of(std::string_view name, std::string_view prices) const {
    auto catalogue = load_(tables::embedded_files());
    if (!catalogue) return failed(catalogue.error());
    auto book = price::read_book(name, prices, *catalogue);
    if (!book) return failed(book.error());
    price::offer_only_priced(*book, *catalogue);
    return Stock{std::move(*catalogue), std::move(*book)};
}

Outcome<Bench> Bench::load(Load read) {
    Bench bench(read);
    auto stock = bench.stock_of("demo price book", tables::embedded_text("price/demo.csv"));
    if (!stock) return failed(stock.error());
    bench.own_ = std::make_unique<Stock>(std::move(*stock));
    return bench;
}

const Stock* Bench::stock(std::string_view name, const std::optional<std::string>& prices,
                          Faults& faults) {
    if (!prices) return own_.get();
    if (other_ && name_ == name && text_ == *prices) return other_.get();
    auto stock = stock_of(name, *prices);
    if (!stock) {
        faults.insert(faults.end(), stock.error().begin(), stock.error().end());
        return nullptr;
    }
    other_ = std::make_unique<Stock>(std::move(*stock));
    name_ = name;
    text_ = *prices;
    return other_.get();
}

}  // namespace toft::request
