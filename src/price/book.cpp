#include "price/book.h"

#include "base/csv.h"
#include "base/nearest.h"
#include "price/amount.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace toft::price {

namespace {

constexpr double no_price = std::numeric_limits<double>::quiet_NaN();

/// What the book says of one item, the range as wide as it gives it.
struct Entry {
    int line = 0;
    double low = no_price, net = no_price, high = no_price;
};

/// What an item of the book must look like.
struct Known {
    std::string unit;
    bool bought = true;
    bool has_range = true;
};

using Shelf = std::map<std::string, Known>;

Shelf shelf_of(const tables::Catalogue& catalogue) {
    Shelf shelf;
    for (std::size_t i = 0; i < item_count; ++i) {
        const Item item = static_cast<Item>(i);
        const ItemFacts& facts = facts_of(item);
        const bool range = item != Item::vat_percent && item != Item::margin_percent;
        shelf[facts.word] = {facts.unit, facts.bought, range};
    }
    for (const auto& cable : catalogue.cables) shelf[cable_item(cable)] = {"m"};
    for (const auto& separate : catalogue.separates) shelf[separate_item(separate)] = {"m"};
    for (const auto& device : catalogue.devices) shelf[device_item(device)] = {"each"};
    return shelf;
}

/// Where each column of the book stands; absent ones past the end.
struct Columns {
    std::size_t item, unit, net, low, high, note;
};

class BookReader {
public:
    BookReader(std::string_view name, const tables::Catalogue& catalogue)
        : name_(name), catalogue_(catalogue), shelf_(shelf_of(catalogue)) {}

    BookRead read(std::string_view text) {
        rows_of(text);
        out_.book.name = std::string(name_);
        const double margin = margin_share();
        fill(out_.book.cost, &Entry::net, 0);
        fill(out_.book, &Entry::net, margin);
        fill(out_.book.low, &Entry::low, margin);
        fill(out_.book.high, &Entry::high, margin);
        say_what_is_missing();
        return std::move(out_);
    }

private:
    void rows_of(std::string_view text) {
        constexpr std::size_t largest = 1u << 20;
        if (text.size() > largest) {
            return fault(1, "a price book has at most a mebibyte (1 048 576 bytes)");
        }
        constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
        if (text.substr(0, byte_order_mark.size()) == byte_order_mark) {
            text.remove_prefix(byte_order_mark.size());
        }
        while (!text.empty() && std::string_view(" \t\r\n").find(text.back()) != text.npos) {
            text.remove_suffix(1);
        }
        const std::string_view header = text.substr(0, text.find('\n'));
        if (header.find(';') != header.npos && header.find(',') == header.npos) {
            return fault(1,
                         "the cells are set apart by semicolons; save the table as CSV with "
                         "commas, and pence after a dot");
        }
        auto table = parse_csv(name_, text);
        if (!table) {
            for (Fault& f : table.error()) {
                out_.faults.push_back({"price", "", f.pointer + ": " + f.says, "", {}});
            }
            return;
        }
        columns_of(table->header);
        if (!out_.faults.empty()) return;
        out_.readable = true;
        for (const CsvRow& row : table->rows) take(row);
    }

    void columns_of(const std::vector<std::string>& header) {
        const auto place = [&](const char* column) {
            std::size_t i = 0;
            while (i < header.size() && trimmed(header[i]) != column) ++i;
            return i;
        };
        columns_ = {place("item"),    place("unit"),     place("net_gbp"),
                    place("low_gbp"), place("high_gbp"), place("note")};
        for (const auto& [at, column] :
             {std::pair{columns_.item, "item"}, std::pair{columns_.unit, "unit"},
              std::pair{columns_.net, "net_gbp"}}) {
            if (at < header.size()) continue;
            fault(1, fmt::format("there is no column {}; the first line names the columns: item, "
                                 "unit, net_gbp, and if you like low_gbp, high_gbp, note",
                                 column));
        }
    }

    static std::string cell(const CsvRow& row, std::size_t column) {
        return column < row.cells.size() ? trimmed(row.cells[column]) : "";
    }

    void take(const CsvRow& row) {
        const bool empty = std::all_of(row.cells.begin(), row.cells.end(),
                                       [](const std::string& c) { return trimmed(c).empty(); });
        if (empty) return;
        const std::string item = cell(row, columns_.item);
        const auto known = shelf_.find(item);
        if (known == shelf_.end()) return not_known(row.line, item);
        const auto [at, fresh] = entries_.emplace(item, Entry{row.line});
        if (!fresh) {
            return fault(row.line, fmt::format("{} stands on line {} already; keep one of them",
                                               item, at->second.line));
        }
        const std::string unit = cell(row, columns_.unit);
        if (unit != known->second.unit) {
            fault(row.line, fmt::format("{} goes by the unit {}, not by {}", item,
                                        known->second.unit, unit.empty() ? "nothing" : unit));
        }
        sums(row, item, known->second, at->second);
        if (!known->second.has_range) return;
        ++out_.book.rows;
        if (cell(row, columns_.note).rfind("invented", 0) == 0) ++out_.book.invented;
    }

    void sums(const CsvRow& row, const std::string& item, const Known& known, Entry& entry) {
        entry.net = sum(row, columns_.net, item);
        entry.low = range_end(row, columns_.low, item, entry.net);
        entry.high = range_end(row, columns_.high, item, entry.net);
        if (entry.low > entry.net || entry.high < entry.net) {
            fault(row.line,
                  fmt::format("{}: low_gbp is at most the price and high_gbp at least", item));
        } else if (!known.has_range && (entry.low < entry.net || entry.high > entry.net)) {
            fault(row.line, fmt::format("{} has no low and high: leave them empty", item));
        }
    }

    double sum(const CsvRow& row, std::size_t column, const std::string& item) {
        const Amount amount = amount_of(cell(row, column));
        if (!amount.wrong) return amount.value;
        fault(row.line,
              fmt::format("{}: “{}” is not a price: {}", item, cell(row, column), amount.wrong));
        return no_price;
    }

    double range_end(const CsvRow& row, std::size_t column, const std::string& item, double net) {
        return cell(row, column).empty() ? net : sum(row, column, item);
    }

    void not_known(int line, const std::string& item) {
        std::vector<std::string> words;
        for (const auto& [word, known] : shelf_) words.push_back(word);
        const std::string near = nearest_word(item, words);
        Fault f{"price",
                "",
                fmt::format("{}, line {}: there is no item “{}”; toft prices lists them", name_,
                            line, item),
                near,
                {}};
        out_.faults.push_back(std::move(f));
    }

    void fault(int line, const std::string& says) {
        out_.faults.push_back(
            {"price", "", fmt::format("{}, line {}: {}", name_, line, says), "", {}});
    }

    double margin_share() const {
        const auto at = entries_.find(item_word(Item::margin_percent));
        return at == entries_.end() ? 0 : at->second.net / 100;
    }

    /// A price of the book with the margin, to the penny; without one it stays as it is written.
    double priced(const std::string& item, double Entry::*end, double margin) const {
        const auto at = entries_.find(item);
        if (at == entries_.end()) return no_price;
        const double cost = at->second.*end;
        if (margin == 0 || !shelf_.at(item).bought) return cost;
        return penny(pounds(cost * (1 + margin))).number();
    }

    void fill(Prices& prices, double Entry::*end, double margin) const {
        for (std::size_t i = 0; i < item_count; ++i) {
            prices.amounts[i] = priced(item_word(static_cast<Item>(i)), end, margin);
        }
        double& share = prices.amounts[static_cast<std::size_t>(Item::margin_percent)];
        if (std::isnan(share)) share = 0;
        for (const auto& cable : catalogue_.cables) {
            prices.cables.push_back(pounds_per_metre(priced(cable_item(cable), end, margin)));
        }
        for (const auto& separate : catalogue_.separates) {
            prices.separates.push_back(
                pounds_per_metre(priced(separate_item(separate), end, margin)));
        }
        for (const auto& device : catalogue_.devices) {
            prices.devices.push_back(pounds(priced(device_item(device), end, margin)));
        }
    }

    bool stands(const std::string& item) const { return entries_.count(item) > 0; }

    /// Of a table that cannot be read everything would be missing: that is not said.
    void say_what_is_missing() {
        if (!out_.readable) return;
        std::string items;
        const auto add = [&](const std::string& item) {
            items += (items.empty() ? "" : ", ") + item;
        };
        for (std::size_t i = 0; i < item_count; ++i) {
            const char* item = item_word(static_cast<Item>(i));
            if (!stands(item) && static_cast<Item>(i) != Item::margin_percent) add(item);
        }
        // A bond takes the next thicker conductor that is priced.
        if (!catalogue_.separates.empty()) {
            const std::string thickest = separate_item(catalogue_.separates.back());
            if (!stands(thickest)) add(thickest);
        }
        if (items.empty()) return;
        out_.faults.push_back(
            {"price",
             "",
             fmt::format("{}: every job may need these and they have no price: {}", name_, items),
             "",
             {}});
    }

    std::string_view name_;
    const tables::Catalogue& catalogue_;
    Shelf shelf_;
    Columns columns_{};
    std::map<std::string, Entry> entries_;
    BookRead out_;
};

Book with_prices(const Book& book, const Prices& prices) {
    Book other = book;
    static_cast<Prices&>(other) = prices;
    return other;
}

}  // namespace

double Prices::price(const BookRow& row) const {
    switch (row.of) {
        case BookRow::Of::cable:
            return cables[row.index].number();
        case BookRow::Of::separate:
            return separates[row.index].number();
        case BookRow::Of::device:
            return devices[row.index].number();
        case BookRow::Of::item:
            break;
    }
    return amounts[row.index];
}

Book at_low(const Book& book) { return with_prices(book, book.low); }

Book at_high(const Book& book) { return with_prices(book, book.high); }

BookRead look_at_book(std::string_view name, std::string_view text,
                      const tables::Catalogue& catalogue) {
    return BookReader(name, catalogue).read(text);
}

Outcome<Book> read_book(std::string_view name, std::string_view text,
                        const tables::Catalogue& catalogue) {
    BookRead read = look_at_book(name, text, catalogue);
    if (!read.faults.empty()) return failed(std::move(read.faults));
    return std::move(read.book);
}

}  // namespace toft::price
