#include "base/csv.h"

#include <fmt/format.h>

namespace toft {

namespace {

class Scanner {
public:
    explicit Scanner(std::string_view text) : text_(text) {}

    bool done() const { return at_ >= text_.size(); }
    bool open_quote() const { return open_quote_; }
    /// Line of the first quote that neither opens, closes nor doubles one; 0 for none.
    int stray_quote() const { return stray_quote_; }

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

    bool at_end_of_cell() const {
        return done() || text_[at_] == ',' || text_[at_] == '\n' || text_[at_] == '\r';
    }

    void stray() {
        if (stray_quote_ == 0) stray_quote_ = line_;
    }

    std::string cell() { return take('"') ? quoted() : bare(); }

    std::string bare() {
        const std::size_t start = at_;
        while (!at_end_of_cell()) {
            if (text_[at_] == '"') stray();
            ++at_;
        }
        return std::string(text_.substr(start, at_ - start));
    }

    std::string quoted() {
        std::string s;
        while (!done()) {
            const char c = text_[at_++];
            if (c == '"' && !take('"')) {
                if (!at_end_of_cell()) stray();
                return s;
            }
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
    int stray_quote_ = 0;
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
    if (scanner.stray_quote() != 0) {
        faults.push_back(
            table_fault(name, scanner.stray_quote(), "a quote stands in the middle of a cell"));
    }
    if (!faults.empty()) return failed(std::move(faults));
    return table;
}

std::string csv_cell(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + "\"";
}

}  // namespace toft
