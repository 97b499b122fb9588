#include "tables/sheet.h"

namespace toft::tables {

namespace {

Footing footing_in(Sheet& sheet, std::size_t row) {
    return {sheet.word(row, "key"), authority_in(sheet, row), sheet.word(row, "clause"),
            sheet.cite(row)};
}

void read_types(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "guard/type.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        LoadType row{sheet.word(i, "kind"),
                     sheet.word(i, "plain"),
                     sheet.word(i, "drive_one"),
                     sheet.word(i, "drive_three"),
                     sheet.word(i, "unsaid") == "drive",
                     sheet.cite(i)};
        for (const std::string* type : {&row.plain, &row.drive_one, &row.drive_three}) {
            if (*type != "A" && *type != "F" && *type != "B") {
                sheet.fault(i, "no such type: " + *type);
            }
        }
        c.guard.types.push_back(std::move(row));
    }
}

}  // namespace

void read_guard(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet need(files, "guard/need.csv", c.citations, faults);
    for (std::size_t i = 0; i < need.rows(); ++i) {
        c.guard.needs.push_back(
            {footing_in(need, i), milliamperes(need.number(i, "sensitivity_ma"))});
    }
    Sheet basis(files, "guard/basis.csv", c.citations, faults);
    for (std::size_t i = 0; i < basis.rows(); ++i) {
        c.guard.footings.push_back(footing_in(basis, i));
    }
    read_types(files, c, faults);
    Sheet leakage(files, "guard/leakage.csv", c.citations, faults);
    for (std::size_t i = 0; i < leakage.rows(); ++i) {
        const auto low = leakage.cited(i, milliamperes(leakage.number(i, "low_ma")));
        const auto high = leakage.cited(i, milliamperes(leakage.number(i, "high_ma")));
        c.guard.leakages.push_back({leakage.word(i, "kind"), low, high});
    }
}

const GuardNeed* find_need(const Guard& guard, std::string_view key) {
    for (const GuardNeed& row : guard.needs) {
        if (row.footing.key == key) return &row;
    }
    return nullptr;
}

const Footing* find_footing(const Guard& guard, std::string_view key) {
    for (const Footing& row : guard.footings) {
        if (row.key == key) return &row;
    }
    return nullptr;
}

}  // namespace toft::tables
