#include "codec/reference.h"
#include "price/listing.h"
#include "request/body.h"
#include "request/verbs.h"

namespace toft::request {

namespace {

std::string prices(Bench& bench, std::string_view text, const Asked&) {
    Body body(text);
    const Stock* stock = body.stock(bench);
    if (!body.finish() || !stock) return body.faults_text();
    return codec::write_prices(stock->book.name, price::listed(stock->book, stock->catalogue));
}

}  // namespace

Verb prices_verb() {
    return {"prices",
            "every item of the price book with its range and use",
            "toft-prices/1",
            "",
            false,
            {{"prices", "string", false, "a price book of one's own, as a table of text"},
             {"prices_name", "string", false, "the name that book goes by"}},
            prices};
}

}  // namespace toft::request
