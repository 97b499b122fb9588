// The user's own price book.

#include "http/problem.h"
#include "price/book.h"
#include "server/price_book.h"
#include "server/told.h"
#include "store/settings.h"
#include "tables/embedded.h"

namespace toft::server {

namespace {

constexpr std::size_t largest_book = 900u << 10;  // bytes; its body is bounded anyway
constexpr std::size_t longest_book_name = 200;    // bytes

Response show_prices(Office& office, const Call&) {
    return with_store(office, [&](store::Store& store) {
        const auto own = store::own_prices(store);
        if (!own) return refused(own.error());
        if (*own) return json({{"own", true}, {"name", (*own)->name}, {"csv", (*own)->csv}});
        return json({{"own", false},
                     {"name", "demo price book"},
                     {"csv", std::string(tables::embedded_text("price/demo.csv"))}});
    });
}

Response set_prices(Office& office, const Call& call) {
    Form form(call.request.body);
    const store::OwnPrices prices{form.needed("name", longest_book_name),
                                  form.needed("csv", largest_book)};
    if (!form.fine()) return refused(form.faults());
    const Faults faults = faults_of_book(office, prices);
    if (!faults.empty()) return problem(422, "the price book cannot be used", faults);
    return with_store(office, [&](store::Store& store) {
        const Faults kept = store::set_own_prices(store, prices);
        if (!kept.empty()) return refused(kept);
        return json({{"own", true}, {"name", prices.name}, {"csv", prices.csv}});
    });
}

Response drop_prices(Office& office, const Call&) {
    return with_store(office, [&](store::Store& store) {
        const Faults faults = store::drop_own_prices(store);
        if (!faults.empty()) return refused(faults);
        Response done;
        done.status = 204;
        return done;
    });
}

}  // namespace

Faults faults_of_book(Office& office, const store::OwnPrices& prices) {
    if (prices.name.empty() || prices.name.size() > longest_book_name) {
        return {{"out-of-range",
                 "/name",
                 "a price book has a name of 1 to " + std::to_string(longest_book_name) + " bytes",
                 "",
                 {}}};
    }
    if (prices.csv.size() > largest_book) {
        return {{"too-large", "/csv", "the price book is too large", "", {}}};
    }
    auto bench = office.benches.take();
    if (!bench) return bench.error();
    const auto book = price::read_book(prices.name, prices.csv, (*bench)->stock().catalogue);
    return book ? Faults() : book.error();
}

std::vector<Route> price_routes() {
    return {
        {Method::get,
         "/api/prices",
         "The price book in use: your own, or the invented one.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{200, "application/json", "Prices", "The book."}},
         show_prices},
        {Method::put,
         "/api/prices",
         "Puts a book of your own in the place of the one in use.",
         Entry::paired,
         Worker::bench,
         Body::json,
         small_body,
         "OwnPrices",
         {},
         {{200, "application/json", "Prices", "In use from now on."},
          {422, "application/problem+json", "Problem",
           "The book cannot be used; every fault is named."}},
         set_prices},
        {Method::remove,
         "/api/prices",
         "Goes back to the invented prices.",
         Entry::paired,
         Worker::desk,
         Body::none,
         0,
         "",
         {},
         {{204, "", "", "Done."}},
         drop_prices},
    };
}

}  // namespace toft::server
