#include "tables/sheet.h"

namespace toft::tables {

namespace {

std::optional<double> value_in(Sheet& sheet, std::size_t row) {
    if (sheet.word(row, "value") == "-") return std::nullopt;
    return sheet.number(row, "value");
}

std::string many_in(Sheet& sheet, std::size_t row) {
    std::string many = sheet.word(row, "many");
    return many == "-" ? "" : many;
}

}  // namespace

void read_levers(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "lever/lever.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        c.levers.rows.push_back({sheet.word(i, "key"), sheet.word(i, "says"), many_in(sheet, i),
                                 sheet.word(i, "cost"), value_in(sheet, i), sheet.cite(i)});
    }
    Sheet worth(files, "lever/worth.csv", c.citations, faults);
    LeverWorth& w = c.levers.worth;
    const auto take = [&](const char* key, Cited<double>& into) {
        for (std::size_t i = 0; i < worth.rows(); ++i) {
            if (worth.word(i, "key") == key) into = worth.figure(i, "value");
        }
        if (!into.citation) {
            faults.push_back({"data", "lever/worth.csv", std::string("no row ") + key, "", {}});
        }
    };
    take("least.saving", w.least_saving);
    take("more.headroom", w.more_headroom);
    take("small.cost", w.small_cost);
}

const LeverRow* find_lever(const Levers& levers, std::string_view key) {
    for (const LeverRow& row : levers.rows) {
        if (row.key == key) return &row;
    }
    return nullptr;
}

}  // namespace toft::tables
