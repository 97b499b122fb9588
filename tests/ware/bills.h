#pragma once
// A run of 30 m of three-core 10 mm2 and its bill, written by hand.

#include "support/catalogue.h"
#include "support/jobs.h"
#include "ware/list.h"

#include <string>

namespace toft::ware {

/// Owns what a RunBill points at.
struct HandMade {
    site::Job job = support::plain_job();
    answer::SchemeAnswer scheme;
    price::Bill bill;

    explicit HandMade(const std::string& name = "Garage") {
        scheme.building.name = name;
        answer::StretchAnswer stretch;
        stretch.family = "armoured XLPE copper";
        stretch.standard = "BS 5467";
        stretch.cores = 3;
        stretch.live_mm2 = 10;
        stretch.overall_mm = 19.5;
        stretch.length_m = 30;
        scheme.run.stretches = {stretch};
        scheme.run.device = {"BS 88-3", "", "fuse", 32, 16};
        run().legs.resize(1);
    }

    site::Run& run() { return job.runs[0]; }
    answer::StretchAnswer& stretch() { return scheme.run.stretches[0]; }

    /// One more material line.
    HandMade& line(price::Part part, const std::string& item, double quantity, double each,
                   int number = 0) {
        price::BillLine one;
        one.part = part;
        one.item = item;
        one.says = "here";
        one.number = number;
        one.quantity = quantity;
        one.unit = "each";
        one.each = pounds(each);
        one.amount = penny(quantity * each);
        bill.push_back(one);
        return *this;
    }

    static Pounds penny(double amount) {
        return pounds(static_cast<double>(static_cast<long long>(amount * 100 + 0.5 + 1e-6)) / 100);
    }

    RunBill part() const { return {scheme, job.runs[0], bill}; }
    List list() const { return list_of(support::catalogue(), job, {part()}); }
};

/// The only row whose name begins so; an empty row where there is none.
inline Row row_of(const List& list, const std::string& begins) {
    for (const Row& row : list.rows) {
        if (row.what.rfind(begins, 0) == 0) return row;
    }
    return {};
}

}  // namespace toft::ware
