#pragma once
// What a scheme is made of and what is done for it, line by line: the very lines its price is the
// sum of. Page: docs/price-book.md.

#include "price/part.h"
#include "price/price.h"

#include <string>
#include <vector>

namespace toft::price {

struct BillLine {
    Part part = Part::house_end;
    Sort sort = Sort::material;
    std::string item;  ///< as the book names it: "cable 3x10", "gland pair small", "labour hour"
    std::string says;  ///< what it is here: "pair of glands", "labour on the glands"
    int number = 0;    ///< of the leg, stretch or circuit it belongs to, from 1; 0 for none
    double quantity = 0;
    std::string unit;  ///< of the quantity, as in the book: m, each, h
    Pounds each;       ///< net, with the book's margin
    Pounds amount;     ///< to the penny; the lines of a part add up to its price exactly
};

using Bill = std::vector<BillLine>;

/// The bill of one scheme; quantities of nothing are left out.
Bill bill_of(const Book& book, const study::Setting<Silent>& setting,
             const study::RunScheme& scheme, const Extras& extras);

/// Parts, net, tax and total of a bill, as price_of gives them.
Price<Silent> price_of_bill(const Bill& bill, const Book& book);

/// Work of one kind in a bill.
struct TaskHours {
    std::string task;  ///< "labour on the glands"
    double hours = 0;
    Pounds amount;
};

/// Labour by task, in order of the bill; the same task of several legs or circuits together.
std::vector<TaskHours> hours_by_task(const Bill& bill);

}  // namespace toft::price
