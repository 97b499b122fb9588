#pragma once
// The one place through which every line of a price goes: quantity times the book's price, to the
// penny, told to whoever listens. Templates of this folder's own .cpp files.

#include "base/ledger.h"
#include "price/book.h"
#include "price/part.h"
#include "price/row.h"

#include <cmath>
#include <type_traits>

namespace toft::price {

/// One line as it is priced. Words are made only where someone listens.
struct PricedLine {
    Part part = Part::house_end;
    Sort sort = Sort::material;
    BookRow row;
    const char* says = "";
    int number = 0;
    double quantity = 0;
    Pounds each;
    Pounds amount;
};

/// Hears nothing and costs nothing.
struct NoSink {
    static constexpr bool listens = false;
};

/// Takes the dust of binary sums off an amount that is whole pennies anyway.
inline Pounds without_dust(Pounds amount) {
    return Pounds(std::floor(amount.number() * 100 + 0.5) / 100);
}
inline Traced<Pounds> without_dust(const Traced<Pounds>& amount) {
    return traced(without_dust(amount.value), amount.expression);
}

template <class L, class S>
class Lines {
public:
    using Money = ValueIn<L, Pounds>;
    using Number = ValueIn<L, double>;

    Lines(L& ledger, const Book& book, S& sink) : ledger_(ledger), book_(book), sink_(sink) {}

    void begin(Part part) { part_ = part; }

    /// One of it.
    Money one(const Name& name, const BookRow& row) {
        return told(name.meaning, name.part, row, 1.0, penny(price(name, row)));
    }
    Money one(const Name& name, Item item) { return one(name, BookRow::item(item)); }

    /// So many of it.
    template <class N>
    Money some(const Name& name, const BookRow& row, const N& count) {
        return told(name.meaning, name.part, row, plain(count), penny(price(name, row) * count));
    }
    template <class N>
    Money some(const Name& name, Item item, const N& count) {
        return some(name, BookRow::item(item), count);
    }

    /// Cut from the drum.
    Money cut(const Name& name, const BookRow& row, const ValueIn<L, Metres>& length) {
        const auto each = ledger_.stated(name, pounds_per_metre(book_.price(row)), from());
        return told(name.meaning, name.part, row, number_of(plain(length)), penny(each * length));
    }

    /// Hours of the item, for each of `count`. `name` is that of the hours.
    template <class N>
    Money labour(const Name& name, const char* says, Item hours, const N& count) {
        return worked(name, says, hour() * (hours_of(name, hours) * count),
                      book_.amount(hours) * plain(count));
    }
    Money labour(const Name& name, const char* says, Item hours) {
        return worked(name, says, hour() * hours_of(name, hours), book_.amount(hours));
    }

    Money nothing(const Name& name) { return ledger_.stated(name, pounds(0), from()); }

private:
    const char* from() const { return book_.name.c_str(); }

    Money price(const Name& name, const BookRow& row) {
        return ledger_.stated(name, pounds(book_.price(row)), from());
    }
    Money hour() { return price({"p.hour", "price of an hour"}, BookRow::item(Item::labour_hour)); }
    Number hours_of(const Name& name, Item hours) {
        return ledger_.stated(name, book_.amount(hours), from());
    }
    Money worked(const Name& name, const char* says, const Money& exact, double hours) {
        return told(says, name.part, BookRow::item(Item::labour_hour), hours, penny(exact));
    }

    Money told(const char* says, int number, const BookRow& row, double quantity,
               const Money& amount) {
        if constexpr (S::listens) {
            const Sort sort = row.of == BookRow::Of::item
                                  ? facts_of(static_cast<Item>(row.index)).sort
                                  : Sort::material;
            sink_.take({part_, sort, row, says, number, quantity, pounds(book_.price(row)),
                        plain(amount)});
        }
        return amount;
    }

    L& ledger_;
    const Book& book_;
    S& sink_;
    Part part_ = Part::house_end;
};

}  // namespace toft::price
