#include "cli/workbench.h"

#include "cli/files.h"
#include "codec/job.h"
#include "price/offer.h"
#include "tables/embedded.h"

namespace toft::cli {

namespace {

std::string& chosen_prices() {
    static std::string path;
    return path;
}

}  // namespace

void use_prices(const std::string& path) { chosen_prices() = path; }

const std::string& prices_in_use() { return chosen_prices(); }

std::string name_of_book(const std::string& path) {
    const std::size_t slash = path.find_last_of('/');
    return slash == std::string::npos ? path : path.substr(slash + 1);
}

Outcome<Workbench> load_workbench(const std::string& prices) {
    auto catalogue = tables::load_catalogue(tables::embedded_files());
    if (!catalogue) return failed(catalogue.error());
    Outcome<std::string> text = std::string(tables::embedded_text("price/demo.csv"));
    if (!prices.empty()) text = read_input(prices);
    if (!text) return failed(text.error());
    const std::string name = prices.empty() ? "demo price book" : name_of_book(prices);
    auto book = price::read_book(name, *text, *catalogue);
    if (!book) return failed(book.error());
    price::offer_only_priced(*book, *catalogue);
    return Workbench{std::move(*catalogue), std::move(*book)};
}

Outcome<Workbench> load_workbench() { return load_workbench(chosen_prices()); }

Outcome<site::Job> load_job(const Workbench& bench, const std::string& path) {
    auto text = read_input(path);
    if (!text) return failed(text.error());
    return codec::read_job(*text, bench.catalogue);
}

}  // namespace toft::cli
