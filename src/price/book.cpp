#include "price/book.h"

#include "base/text.h"
#include "base/csv.h"

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

/// Armoured XLPE copper goes without its family: "cable 2x10", "cable flat twin and earth 2x2.5".
std::string cable_item(const tables::Cable& cable) {
    const bool plain = cable.family == tables::Family::armoured_xlpe_copper;
    return fmt::format("cable {}{}{}x{}", plain ? "" : tables::family_word(cable.family),
                       plain ? "" : " ", cable.cores, significant(cable.section.number(), 6));
}

/// The item that prices a device: a fuse by its rating (and its standard, unless it is the
/// household one), a breaker by its type and what it can break.
std::string device_item(const tables::Device& device) {
    const std::string rating = significant(device.rating.number(), 6);
    const std::string breaking = significant(device.breaking.value.number() / 1000, 4);
    switch (device.kind) {
        case tables::Kind::fuse:
        case tables::Kind::rewirable:
            if (device.standard == "BS 88-3") return "fuse " + rating;
            return fmt::format("fuse {} {}", device.standard, rating);
        case tables::Kind::breaker:
            return fmt::format("breaker {} {} kA", device.curve, breaking);
        case tables::Kind::rcbo:
            return fmt::format("RCBO {} {} kA", device.curve, breaking);
        case tables::Kind::moulded:
            return fmt::format("moulded breaker {} kA", breaking);
    }
    return "";
}

}  // namespace

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
        book.separates.push_back(
            pounds_per_metre(reader.need("separate " + significant(sold.section.number(), 6))));
    }
    for (const tables::Device& device : catalogue.devices) {
        const bool large = !device.fuse() && device.rating > amperes(40);
        book.devices.push_back(pounds(reader.need(device_item(device)) +
                                      (large ? reader.need("breaker over 40 A extra") : 0)));
    }
    if (!reader.faults.empty()) return failed(std::move(reader.faults));
    return book;
}

}  // namespace toft::price
