// toft prices: the price book, a book to begin with, and what is wrong with one's own.

#include "base/text.h"
#include "cli/command_parts.h"
#include "cli/commands.h"
#include "cli/files.h"
#include "cli/layout.h"
#include "codec/reference.h"
#include "price/offer.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::cli {

namespace {

std::string sum(double amount) { return fixed(amount, 2); }

std::string prices_screen(const price::Book& book, const std::vector<price::ListedRow>& rows) {
    std::string text = fmt::format("{}: net, before tax, in pounds for each unit\n\n", book.name);
    text += fmt::format("  {:<38} {:<8} {:>8} {:>8} {:>8}  {}\n", "item", "unit", "low", "net",
                        "high", "used for");
    for (const price::ListedRow& row : rows) {
        const bool range = row.low != row.net || row.high != row.net;
        text += fmt::format("  {:<38} {:<8} {:>8} {:>8} {:>8}  {}\n", row.item, row.unit,
                            range ? sum(row.low) : "", row.priced ? sum(row.net) : "none",
                            range ? sum(row.high) : "", row.use);
    }
    return text;
}

std::string listing(const std::vector<std::string>& items) {
    std::string text;
    for (const std::string& item : items) text += (text.empty() ? "" : ", ") + item;
    return text;
}

std::string far_words(const price::FarRow& row) {
    return fmt::format(
        "{}: {} by the unit {}, where the invented book has {}: look again whether that is meant",
        row.item, sum(row.here), row.unit, sum(row.there));
}

/// All that can be said of a book: faults, what it lacks, what stands far from the invented one.
int check(const PricesArguments& arguments) {
    auto bench = load_workbench({});
    if (!bench) return bench_exit(bench.error(), false, true);
    const auto text = read_input(arguments.check);
    if (!text) return fault_exit(text.error(), false, "the price book cannot be read:");
    const std::string name = name_of_book(arguments.check);
    const price::BookRead read = price::look_at_book(name, *text, bench->catalogue);
    std::string said;
    if (!read.faults.empty()) said += name + " cannot be used:\n" + faults_screen(read.faults);
    const auto missing = read.readable ? price::unpriced_items(read.book, bench->catalogue)
                                       : std::vector<std::string>();
    if (!missing.empty()) {
        said += wrapped(
            "", "no price, so that what needs one of them new is not offered: " + listing(missing),
            2);
    }
    for (const price::FarRow& row : price::far_from(read.book, bench->book, bench->catalogue)) {
        said += wrapped("", far_words(row), 2);
    }
    if (said.empty()) said = name + ": every item is priced, and none stands far from usual\n";
    if (read.faults.empty()) {
        print(said);
        return done;
    }
    complain(said);
    return bad_input;
}

}  // namespace

int prices(const PricesArguments& arguments) {
    if (arguments.csv && !prices_in_use().empty()) {
        complain(
            "toft: --csv writes the invented book to begin with; your own is the file you named\n");
        return wrong_usage;
    }
    if (!arguments.check.empty()) return check(arguments);
    return with_bench(
        [&](const Workbench& bench) {
            const auto rows = price::listed(bench.book, bench.catalogue);
            if (arguments.json) {
                print(codec::write_prices(bench.book.name, rows));
            } else if (arguments.csv) {
                print(price::book_to_begin_with(rows));
            } else {
                print(prices_screen(bench.book, rows));
            }
            return static_cast<int>(done);
        },
        arguments.json);
}

}  // namespace toft::cli
