#include "tables/sheet.h"

#include "base/order.h"

#include <algorithm>

namespace toft::tables {

namespace {

/// Uses that the tables do not list, and kinds that they do not hold, fall back on these.
const std::string household = "household";
const LoadOfKind not_listed{"", std::string(load_in_full), false, nullptr};

std::string one_word(std::string words) {
    std::replace(words.begin(), words.end(), ' ', '.');
    return words;
}

void read_allowances(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "demand/allowance.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        const std::string load = sheet.word(i, "load");
        const std::string premises = sheet.word(i, "premises");
        c.demand.allowances.push_back(
            {load, premises, one_word(load), one_word(load + " " + premises),
             sheet.cited(i, amperes(sheet.number(i, "first_a"))), sheet.figure(i, "largest"),
             sheet.figure(i, "second"), sheet.figure(i, "rest"),
             sheet.cited(i, amperes(sheet.number(i, "extra_a")))});
    }
    if (c.demand.allowances.empty()) {
        faults.push_back({"data", "demand/allowance.csv", "no allowance is stated", "", {}});
    }
}

/// A load must be a row of the published table or one of the words for what stands outside it.
bool known_load(const Demand& demand, const std::string& load) {
    if (load == load_in_full || load == load_generation || load == load_storage) return true;
    return std::any_of(demand.allowances.begin(), demand.allowances.end(),
                       [&](const Allowance& row) { return row.load == load; });
}

void read_kinds(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet kinds(files, "demand/kind.csv", c.citations, faults);
    for (std::size_t i = 0; i < kinds.rows(); ++i) {
        LoadOfKind row{kinds.word(i, "kind"), kinds.word(i, "load"),
                       kinds.word(i, "alone") == "yes", kinds.cite(i)};
        if (!known_load(c.demand, row.load)) kinds.fault(i, row.load + " is no load of the table");
        c.demand.loads.push_back(std::move(row));
    }
    Sheet usual(files, "demand/usual.csv", c.citations, faults);
    for (std::size_t i = 0; i < usual.rows(); ++i) {
        c.demand.usual.push_back(
            {usual.word(i, "kind"), usual.cited(i, amperes(usual.number(i, "usual_a")))});
    }
}

}  // namespace

void read_demand(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    read_allowances(files, c, faults);
    read_kinds(files, c, faults);
    Sheet premises(files, "demand/premises.csv", c.citations, faults);
    for (std::size_t i = 0; i < premises.rows(); ++i) {
        c.demand.premises.push_back({premises.word(i, "use"), premises.word(i, "premises")});
        premises.cite(i);
    }
    Sheet yearly(files, "demand/yearly.csv", c.citations, faults);
    for (std::size_t i = 0; i < yearly.rows(); ++i) {
        c.demand.yearly.push_back(
            {yearly.word(i, "use"), yearly.cited(i, yearly.number(i, "hours"))});
    }
    Sheet tails(files, "demand/tails.csv", c.citations, faults);
    for (std::size_t i = 0; i < tails.rows(); ++i) {
        c.demand.tails.push_back({square_millimetres(tails.number(i, "section_mm2")),
                                  tails.cited(i, amperes(tails.number(i, "carries_a")))});
    }
    put_in_order(c.demand.tails,
                 [](const TailsRating& a, const TailsRating& b) { return a.section < b.section; });
}

const Allowance* find_allowance(const Demand& demand, std::string_view load,
                                std::string_view premises) {
    for (const Allowance& row : demand.allowances) {
        if (row.load == load && row.premises == premises) return &row;
    }
    return nullptr;
}

const LoadOfKind& load_of_kind(const Demand& demand, std::string_view kind) {
    for (const LoadOfKind& row : demand.loads) {
        if (row.kind == kind) return row;
    }
    return not_listed;
}

const UsualRating* find_usual(const Demand& demand, std::string_view kind) {
    for (const UsualRating& row : demand.usual) {
        if (row.kind == kind) return &row;
    }
    return nullptr;
}

const std::string& premises_of(const Demand& demand, std::string_view use) {
    for (const PremisesOfUse& row : demand.premises) {
        if (row.use == use) return row.premises;
    }
    return household;
}

const YearlyHours& yearly_hours(const Demand& demand, std::string_view use) {
    static const YearlyHours none;
    const YearlyHours* other = &none;
    for (const YearlyHours& row : demand.yearly) {
        if (row.use == use) return row;
        if (row.use == "other") other = &row;
    }
    return *other;
}

const TailsRating* find_tails(const Demand& demand, SquareMillimetres section) {
    const TailsRating* found = nullptr;
    for (const TailsRating& row : demand.tails) {
        if (row.section <= section) found = &row;
    }
    return found;
}

}  // namespace toft::tables
