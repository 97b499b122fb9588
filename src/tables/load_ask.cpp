#include "tables/sheet.h"

#include <cstdlib>

namespace toft::tables {

namespace {

/// "any", or figures in rising order with spaces between.
std::vector<double> values_in(Sheet& sheet, std::size_t row) {
    std::vector<double> values;
    const std::string text = sheet.word(row, "values");
    if (text == "any") return values;
    const char* at = text.c_str();
    while (*at != '\0') {
        char* end = nullptr;
        const double value = std::strtod(at, &end);
        if (end == at || (!values.empty() && value <= values.back())) {
            sheet.fault(row, "not any, nor rising figures: " + text);
            return {};
        }
        values.push_back(value);
        at = end;
    }
    return values;
}

}  // namespace

void read_ask(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "ask/find_out.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        FindOut row{sheet.word(i, "fact"), sheet.word(i, "question"),
                    sheet.word(i, "how"),  sheet.number(i, "minutes"),
                    sheet.word(i, "by"),   values_in(sheet, i),
                    sheet.cite(i)};
        if (row.by != "anyone" && row.by != "electrician" && row.by != "operator") {
            sheet.fault(i, "nobody known by that word: " + row.by);
        }
        c.find_out.push_back(std::move(row));
    }
}

namespace {

/// Places in lists as stars.
std::string starred(std::string_view pointer) {
    std::string out;
    for (std::size_t i = 0; i < pointer.size(); ++i) {
        const bool digit = pointer[i] >= '0' && pointer[i] <= '9';
        const bool place = digit && !out.empty() && (out.back() == '/' || out.back() == '*');
        if (!place) {
            out += pointer[i];
        } else if (out.back() != '*') {
            out += '*';
        }
    }
    return out;
}

}  // namespace

const FindOut* find_out_for(const std::vector<FindOut>& rows, std::string_view pointer) {
    const std::string wanted = starred(pointer);
    for (const FindOut& row : rows) {
        if (row.fact == wanted) return &row;
    }
    return nullptr;
}

}  // namespace toft::tables
