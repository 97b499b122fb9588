#include "tables/csv.h"

#include <fmt/format.h>

namespace toft::tables {

namespace {

class Scanner {
public:
    explicit Scanner(std::string_view text) : text_(text) {}

    bool done() const { return at_ >= text_.size(); }
    bool open_quote() const { return open_quote_; }

    CsvRow row() {
        CsvRow row;
        row.line = line_;
        do row.cells.push_back(cell());
        while (take(','));
        take('\r');
        if (take('\n')) ++line_;
        return row;
    }

private:
    bool take(char c) {
        if (done() || text_[at_] != c) return false;
        ++at_;
        return true;
    }

    std::string cell() { return take('"') ? quoted() : bare(); }

    std::string bare() {
        const std::size_t start = at_;
        while (!done() && text_[at_] != ',' && text_[at_] != '\n' && text_[at_] != '\r') ++at_;
        return std::string(text_.substr(start, at_ - start));
    }

    std::string quoted() {
        std::string s;
        while (!done()) {
            const char c = text_[at_++];
            if (c == '"' && !take('"')) return s;
            if (c == '\n') ++line_;
            s += c;
        }
        open_quote_ = true;
        return s;
    }

    std::string_view text_;
    std::size_t at_ = 0;
    int line_ = 1;
    bool open_quote_ = false;
};

Fault table_fault(std::string_view name, int line, std::string says) {
    return {"data", fmt::format("{}:{}", name, line), std::move(says), "", {}};
}

}  // namespace

Outcome<CsvTable> parse_csv(std::string_view name, std::string_view text) {
    Scanner scanner(text);
    if (scanner.done()) return failed(table_fault(name, 1, "the table is empty"));
    CsvTable table;
    Faults faults;
    table.header = scanner.row().cells;
    while (!scanner.done()) {
        CsvRow row = scanner.row();
        if (row.cells.size() != table.header.size()) {
            faults.push_back(table_fault(name, row.line,
                                         fmt::format("{} cells where the header has {}",
                                                     row.cells.size(), table.header.size())));
        }
        table.rows.push_back(std::move(row));
    }
    if (scanner.open_quote()) faults.push_back(table_fault(name, 1, "a quote is never closed"));
    if (!faults.empty()) return failed(std::move(faults));
    return table;
}

}  // namespace toft::tables
