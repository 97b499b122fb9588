#include "price/book.h"

#include "base/csv.h"
#include "base/text.h"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>

namespace toft::price {

namespace {

struct Entry {
    std::string name;
    double amount = 0;
};

class BookReader {
public:
    explicit BookReader(std::string_view name) : name_(name) {}

    void items(const CsvTable& table) {
        for (const CsvRow& row : table.rows) {
            if (row.cells.size() < 3) continue;
            char* end = nullptr;
            const double amount = std::strtod(row.cells[2].c_str(), &end);
            const bool number = !row.cells[2].empty() && *end == '\0' && std::isfinite(amount);
            if (!number || amount < 0) {
                fault(row.line, fmt::format("{} is not a price", row.cells[2]));
                continue;
            }
            entries_.push_back({row.cells[0], amount});
        }
    }

    double need(const std::string& item) {
        for (const Entry& e : entries_) {
            if (e.name == item) return e.amount;
        }
        fault(0, fmt::format("the book has no price for {}", item));
        return 0;
    }

    void fault(int line, std::string says) {
        faults.push_back({"price", fmt::format("{}:{}", name_, line), std::move(says), "", {}});
    }

    Faults faults;

private:
    std::string_view name_;
    std::vector<Entry> entries_;
};

}  // namespace

Book at_low(const Book& book) {
    Book low = book;
    static_cast<Prices&>(low) = book.low;
    return low;
}

Book at_high(const Book& book) {
    Book high = book;
    static_cast<Prices&>(high) = book.high;
    return high;
}

Outcome<Book> read_book(std::string_view name, std::string_view text,
                        const tables::Catalogue& catalogue) {
    auto table = parse_csv(name, text);
    if (!table) return failed(table.error());
    Book book;
    book.name = std::string(name);
    BookReader reader(name);
    reader.items(*table);
    for (std::size_t i = 0; i < item_count; ++i) {
        book.amounts[i] = reader.need(item_word(static_cast<Item>(i)));
    }
    for (const tables::Cable& cable : catalogue.cables) {
        book.cables.push_back(pounds_per_metre(reader.need(cable_item(cable))));
    }
    for (const tables::Conductor& sold : catalogue.separates) {
        book.separates.push_back(pounds_per_metre(reader.need(separate_item(sold))));
    }
    for (const tables::Device& device : catalogue.devices) {
        book.devices.push_back(pounds(reader.need(device_item(device))));
    }
    if (!reader.faults.empty()) return failed(std::move(reader.faults));
    book.low = book.high = book.cost = book;
    return book;
}

}  // namespace toft::price
